### Parts, network and operating point (circuit)

circuit-not-converged = The currents in this sculpture did not settle after { $steps } steps (imbalance { $residual } of the largest current). No figure is shown, because it would be wrong. Please keep the sculpture's file and report it.
circuit-power-lost = The power that the packs give and the power that the parts take differ by { $share } of the largest part's (imbalance { $residual }). No figure is shown, because it would be wrong. Please keep the sculpture's file and report it.
