# Spanish: one short sentence each. All defer to local rules and licensed people.

caution-fuse-at-battery = Pon el fusible junto a la batería, lo más cerca posible del borne.
caution-mains-wiring = La instalación fija de 230 V es cosa de un electricista autorizado.
caution-backfeed = Nunca conectes un inversor a la toma exterior ni a un enchufe de pared: las clavijas quedan con tensión al aire. Usa el enchufe del inversor, o un electricista autorizado.
caution-battery-gas = Las baterías de plomo sueltan gas explosivo al cargar: ventila el cajón, sin chispas.
caution-lithium-cold = Nunca cargues litio por debajo de 0 °C, y con suavidad hasta 5 °C: estropea las celdas.
caution-bypass-bms = No puentees el BMS: es lo que separa la batería de litio de un incendio. Busca por qué salta, o pregunta al vendedor.
caution-mixed-batteries = No juntes baterías de distinto tipo, edad o tamaño, y nunca litio directo con plomo.
caution-big-current = Corrientes grandes: cable corto y grueso, terminales apretados y fusible adecuado. Que lo revise un profesional.
caution-no-fuse = Nunca quites, puentees ni agrandes un fusible: arde el cable, y así arden los vehículos.
caution-carbon-monoxide = El monóxido de carbono mata: generadores y motores solo fuera, lejos de tiendas y rejillas.
caution-fuel-heater = Una calefacción de combustible necesita el escape fuera y un detector de CO que funcione.
caution-medical = Un aparato médico necesita un respaldo que no dependa de una sola batería; pregunta al fabricante o a tu clínica.
caution-starter-reserve = La batería de arranque es para arrancar: lleva un arrancador y pon una segunda batería para el campamento.
caution-surge = Motores y compresores tiran varias veces su potencia un momento al arrancar.
caution-alternator-share = Es mucho para la mayoría de alternadores: mira su potencia y que no se caliente al ralentí.
caution-plate-first = Mandan la placa del aparato y las normas locales.
caution-park-rules = Pregunta en el camping: muchos limitan horas y ruido de los generadores.
caution-high-dc = Por encima de unos 60 V de continua un contacto puede herir: cubre los paneles y haz que lo revise un profesional.
