"""The pages: starting shapes with sliders, sculptures from files, the verdict always there.

`serve` opens them on this computer. Pages only lay out what the workers of `app` answer: page = layout(answer); a
question that is no longer asked is stopped.
"""

from lumped.web.serving import add_routes, pages, serve

__all__ = ["add_routes", "pages", "serve"]
