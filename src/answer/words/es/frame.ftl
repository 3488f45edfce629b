# Spanish: what all answers share.

locale = es-ES
assumed = Supuesto
working = Cálculo
careful = Ojo
need = { $title } Para eso me falta: { $needs }. ¿Me lo dices?
unsafe = No, por favor, no lo hagas.
only-english = (Eso de momento solo lo respondo en inglés.)
speak-now = De acuerdo, a partir de ahora respondo aquí en español.
and = y
that = eso

## Times. $n is the number as written, $count the same to choose the plural by.

for-ever = sin fin
minutes = { $n } { $count ->
    [one] minuto
   *[other] minutos
}
hours = { $n } { $count ->
    [one] hora
   *[other] horas
}
days = { $n } { $count ->
    [one] día
   *[other] días
}
about-hours = unas { $n } { $count ->
    [one] hora
   *[other] horas
}
about-days = unos { $n } { $count ->
    [one] día
   *[other] días
}
one-day = un día
unit-minutes = minutos
unit-days = { $count ->
    [one] día
   *[other] días
}

## How a message was read.

unknown-unit-near = No conozco «{ $said }». ¿Quieres decir «{ $near }»?
unknown-unit = No conozco la unidad «{ $said }». ¿Cuál es: A, Ah, W o V?
unit-mismatch = He leído «{ $said }» como { $repair }.
absurd-value = «{ $said }» no puede ser ({ $thing }). ¿Cuánto es de verdad?
contradiction = No encaja: { $first } da { $expected }, no { $second }.
ambiguous = He tomado «{ $said }» como { $taken }; si querías decir { $other }, dímelo.

## What is missing.

need-battery = el tamaño de la batería (por ejemplo «100Ah AGM»)
need-loads = qué funciona con ella (por ejemplo «nevera 1,2 A» o «40Ah al día»)
need-run = qué tiene que alimentar (por ejemplo «nevera 1,2 A» o «40Ah al día»)

## Messages to tap next. Each has to be one that the bot reads.

next-help = ayuda
next-agm = ¿y si es AGM?
next-lithium = ¿y si es litio?
next-solar = ¿qué placa necesito?
next-yield = ¿cuánto produce la placa?
next-panel = ¿qué placa necesito?
next-battery = ¿qué batería necesito?
next-lasts = ¿cuánto dura?
next-mine = ¿cuánto dura mi equipo?
next-days = que sean { $n } días
next-working = muestra el cálculo
next-mppt = ¿y si es MPPT?
next-pwm = ¿y si es PWM?
next-sunny = ¿y si está soleado?
next-overcast = ¿y si está nublado?
next-path = ¿relé separador o dcdc?
next-save = guárdalo como mi equipo
