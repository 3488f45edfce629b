title = Pregúntame otra vez

sample = Prueba «nevera 1,2 A, 100Ah, ¿3 días?» o di «ayuda».
i-got = He entendido: { $parts }. ¿Qué quieres saber: cuánto dura, qué poner o cómo cargarla?
welcome = De nada. ¿Algo más de electricidad?
hello = ¡Hola! ¿Qué te calculo?
number-of-what = { $number } de qué: ¿amperios, amperios hora, vatios, voltios, horas?
no-question = No he visto ahí una pregunta de electricidad. ¿Qué quieres saber?
