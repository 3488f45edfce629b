title = ¿Qué puedo preguntar?

what-i-do = Calculo la electricidad del camping: escribe corto, con los números que tengas. Prueba:
then = Luego «¿y si es litio?», «que sean 5 días» o «muestra el cálculo».
in-a-group = En un grupo: empieza con /power, o respóndeme.
tell-once = Dime tu equipo una vez y lo uso desde entonces.
