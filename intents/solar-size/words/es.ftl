title = ¿Qué placa necesito?
example = ¿qué placa necesito para 40 Ah al día en Galicia en mayo?

panel-size = Unos { $watts } W de placa ({ $range }){ $where }: una de { $size } W llega.
panel-enough = Sí, { $has } W bastan: necesitas unos { $watts } W de placa ({ $range }){ $where }.
panel-tight = Justo: necesitas unos { $watts } W de placa ({ $range }){ $where }, y tienes { $has } W.
panel-short = No, { $has } W no bastan: necesitas unos { $watts } W de placa ({ $range }){ $where }.
no-sunrise = Ninguna placa sirve: el sol no sale{ $where }.
puts-back = Eso repone unos { $ah } Ah al día en un día medio; varios días nublados seguidos piden batería de reserva.
owner-covers = Los { $watts } W de { $owner } llegan.
owner-short = Los { $watts } W de { $owner } no llegan.
your-covers = Tus { $watts } W llegan.
your-short = Tus { $watts } W no llegan.
covers = { $watts } W llegan.
falls-short = { $watts } W no llegan.

no-because = No: { $reason }
only-in-sun = Solo mientras le da el sol: { $reason }
panel-too-small = { $panel } W de placa dan unos { $best } W a pleno sol, y { $names } gasta unos { $draw } W.
no-sun-at-night = de noche no hay sol, así que hace falta una batería.
stops-with-cloud = se para cuando una nube o la tarde quitan el sol; en medio hace falta una batería.
off-battery-and-panel = Con batería hacen falta unos { $ah } Ah ({ $kwh } kWh) al día, y unos { $watts } W de placa para reponerlos.
off-battery = Con batería hacen falta unos { $ah } Ah ({ $kwh } kWh) al día.
dark = De noche no hay nada de sol: hace falta una batería.
