# What is a person's own: batches that teach, ingredients from a packet.

own-narrowed =
    { $count ->
        [one] Its resistivity is narrowed by one batch that was measured: { $names }.
       *[other] Its resistivity is narrowed by { $count } batches that were measured: { $names }.
    }
own-felt =
    { $count ->
        [one] How it feels is learnt from one batch: { $names }.
       *[other] How it feels is learnt from { $count } batches: { $names }.
    }
own-passed-over = These batches teach nothing here, because nothing was measured or felt, or it is another kind of dough: { $names }.
