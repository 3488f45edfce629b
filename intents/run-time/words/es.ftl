title = ¿Cuánto dura?
example = ¿cuánto dura una nevera de 1,2 A con 100 Ah?

lasts = Dura { $lasts }.
yes-lasts = Sí: dura { $lasts }, y quieres { $wanted }.
tight-lasts = Justo: dura { $lasts }, y quieres { $wanted }.
no-lasts = No, { $wanted } no: dura { $lasts }.
used-up = Ya no queda nada que usar: está tan baja como debe, o más. Cárgala primero.
hangs-on-health = Depende de lo sana que esté la batería: gasta un poco menos, o repón un poco, y llega.
to-make-it = Para { $wanted } necesitas unos { $more } Ah de la misma batería, o unos { $perDay } Ah al día de sol o de viaje.
over-limit = Un aparato tira unos { $amps } A, más de lo que esa batería debería dar sin parar ({ $limit } A): cortará antes.
sags = Con { $amps } A cae a unos { $sag } V a media carga, y los inversores cortan a unos { $cutOut } V.
amps-on-average = { $amps } A de media
ah-a-day = { $ah } Ah al día
gives = { $bank } da unos { $usable } Ah útiles; gastas unos { $drawn }.

the-chat = el grupo
yours = Tu equipo
rig-of = El equipo de { $name }
rig-lasts = { $rig } dura { $time }
first-out = { $rig } se agota primero, tras { $time }; { $other }.
none-makes = Ninguno llega a { $time }: como mucho, { $best }.
all-make = Todos llegan a { $time }: como poco, { $least }.
some-make = Para { $time } llega: { $made }. No llega: { $others }.
rig-line = { $rig }: { $time }, { $usable } Ah útiles a { $use } Ah al día.
