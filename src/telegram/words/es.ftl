# Spanish: menus, buttons and what the bot says besides its answers.

# Commands that have a name in this language, beside the English one.
name-power = energia
name-rig = equipo
name-working = calculo

about-power = Preguntar: /energia nevera 1,2A, 100Ah, ¿3 días?
about-rig = Ver o anotar tu equipo: /equipo 100Ah AGM
about-working = Muestra cómo se ha calculado la última respuesta
about-learn = Un curso corto de energía en el camping (en inglés)
about-help = Qué sé hacer y cómo preguntar
about-settings = Qué tengo en cuenta en este chat
about-privacy = Qué guardo, por qué y cuánto tiempo
about-export = Lo que guardo de ti, en un archivo
about-forget = Borra lo que guardo
about-language = Responder en otro idioma: /language en
about-pictures = Imágenes: con o sin
about-bot = Energía en el camping, calculada: cuánto dura, qué batería, qué panel, con el cálculo.

# What a command says, in words that are understood in this language.
say-help = ayuda
say-rig = muestra mi equipo
say-rig-is = mi equipo es { $rest }
say-working = muestra el cálculo

button-working = Ver el cálculo
button-picture = Imagen
button-place = Mi ubicación
the-working = El cálculo:
share-place = Compartir mi ubicación
share-how = Toca «Compartir mi ubicación» abajo, o escribe el lugar: «en Granada».
    La guardo con unos 10 km de precisión, solo para el sol.

toast-old = Este botón es de una versión anterior mía. Pregunta otra vez.
toast-gone = Ya no veo ese mensaje. Pregunta otra vez.
toast-notYours = Solo quien preguntó, o un admin, puede usar estos botones. Pregúntame con /energia.
toast-moved = La conversación ha seguido. Pregunta otra vez y lo muestro.

pictures-off = De acuerdo, aquí solo texto. «/pictures on» devuelve las imágenes.
pictures-on = De acuerdo, vuelven las imágenes.
only-admin = Solo un admin puede cambiar eso para el grupo.
