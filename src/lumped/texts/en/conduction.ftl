### What the field solver says when it can't answer.

system-not-positive = A { $what } of the dough is { $value }, but it must be a positive number. Give every dough a conductivity above zero.
system-edge-nowhere = A face joins a cell that does not exist (there are { $cells } cells). Number cells from 0.
lead-outside = The lead “{ $lead }” has no dough around it. Push it into a lump.
lead-radius = The lead “{ $lead }” has a radius of { $radius_mm } mm, but it must be above zero.
terminal-not-positive = The contact “{ $lead }” has a conductance that is not above zero. Give it one.
ports-not-converged = The currents between the leads are known to { $error } only, not to { $wanted }, after { $iterations } rounds on a grid of { $pitch_mm } mm. No figure is shown, because it would be wrong. From the command line try --effort full; or keep thin slivers out of the sculpture, and doughs that differ less; and please keep the file and report it.
ports-names = Two leads are called “{ $lead }”. Give each its own name.
