# Lumped: `make` alone prints the commands.
PYTHON ?= python3
VENV   := .venv
BIN    := $(VENV)/bin
SERVE  ?= 1
PORT   ?= 8765

.DEFAULT_GOAL := help
.PHONY: help run test long bench check format browser postgres pictures lock clean

help:  ## print these commands
	@grep -hE '^[a-z]+:.*## ' $(MAKEFILE_LIST) | sed -E 's/^([a-z]+):.*## (.*)/  make \1|\2/' | column -t -s '|'

run: $(VENV)/.ok  ## set up, check the demo sculpture, write out/, then serve the app (SERVE=0: stop after the check)
	@mkdir -p out
	$(BIN)/lumped check demo/harbour-light.toml --pdf out/harbour-light.pdf --picture out/harbour-light.png
	@if [ "$(SERVE)" != 0 ]; then $(BIN)/lumped serve --port $(PORT); fi

test: $(VENV)/.ok browser postgres  ## set up (a browser and a PostgreSQL too) and pass the test suite
	$(BIN)/python -m pytest -n 2 -rs

long: $(VENV)/.ok postgres  ## try for half an hour or so that nothing is lost; goes on where it stopped (results: out/long)
	$(BIN)/python scripts/long.py

bench: $(VENV)/.ok browser postgres  ## measure how fast readings are kept, recipes worked out, sculptures solved
	$(BIN)/python scripts/bench.py
	$(BIN)/python scripts/bench_dough.py
	$(BIN)/python scripts/bench_pages.py
	$(BIN)/python scripts/bench_field.py

check: $(VENV)/.ok  ## lint, format, types, and who may import whom
	$(BIN)/ruff check .
	$(BIN)/ruff format --check .
	$(BIN)/mypy
	$(BIN)/lint-imports --no-cache

format: $(VENV)/.ok  ## put the code in the house's format
	$(BIN)/ruff check --fix .
	$(BIN)/ruff format .

pictures: $(VENV)/.ok browser  ## make the pictures of the README and the docs anew
	$(BIN)/python scripts/pictures.py

lock: $(VENV)/.ok  ## resolve the dependencies anew (needs uv)
	uv pip compile --universal --generate-hashes --no-header --no-annotate --extra dev pyproject.toml -o requirements.lock

clean:  ## remove the environment and everything made
	rm -rf $(VENV) out dist

# One environment for every command; made anew only when the lock or the project file changes.
$(VENV)/.ok: requirements.lock pyproject.toml
	@bash scripts/set-up.sh "$(PYTHON)" "$(VENV)"
	@touch $@

browser:
	@bash scripts/browser.sh

postgres:
	@bash scripts/postgres.sh
