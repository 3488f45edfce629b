title = ¿Qué batería necesito?
example = ¿qué batería necesito para una nevera de 1,2 A y 3 días?

size-of-kind = Unos { $ah } Ah de { $kind } para { $time } ({ $range }): compra el tamaño habitual siguiente, { $size }.
size-or-lithium = Unos { $ah } Ah de { $kind } para { $time } ({ $range }), o unos { $lithium } Ah de litio.
less-with-sun = Con los { $sun } Ah al día del sol bastarían unos { $less } Ah; el tamaño de arriba es sin nada de sol.
sun-covers = El sol que dices cubre el consumo: el tamaño de arriba es para días sin él.
nothing-counted = No cuento nada de lo que entra; el sol y el viaje lo alargan.
big-draw = Un aparato tira unos { $amps } A: mira que la batería lo permita.
too-big-draw = Un aparato tira unos { $amps } A, más de lo que debería dar sin parar ({ $limit } A): ve a mayor, o mira la hoja del fabricante.
too-big-draw-many = Un aparato tira unos { $amps } A, más de lo que deberían dar sin parar ({ $limit } A): ve a mayor, o mira la hoja del fabricante.
long-life = Usada así cada día vive más con unos { $ah } Ah, un tercio al día.
own-does = Tus { $ah } Ah llegan.
own-short = Tus { $ah } Ah se quedan cortos.
used = Gastas unos { $daily } Ah al día, { $need } Ah para { $time }.
used-of-label = Gastas unos { $daily } Ah al día, { $need } Ah para { $time }, y el { $share } % de la etiqueta es útil.
usual-sizes = Tamaños habituales siguientes: { $agm } AGM, { $lithium } litio (la mitad de peso o menos, muchos más ciclos).
