### A text for every member of every coded list of the domain: key LIST-CODE.

## Before a walk

ready-still = Terreno nivelado, ruedas calzadas, gatos y extensiones quietos, nadie debajo
ready-engine-off = Motor apagado, llave en el bolsillo, generador frío
ready-body = Sin anillos ni reloj, con lentes de seguridad
ready-lamp = Lámpara propia: las luces del vehículo se apagarán
ready-meter = Medidor de contacto de la categoría correcta
ready-torque-tool = Herramienta de torque
ready-hand-tools = Herramientas aisladas, cinta, etiquetas
ready-gas = Gas LP cerrado en el tanque
ready-company = Otra persona cerca
ready-phone = Teléfono cargado

## Grades as found

grade-held = Firme
grade-moved = Se movió
grade-loose = Flojo
grade-apart = Cable fuera
grade-looked-at = Visto
grade-not-judged = Sin evaluar
angle-hair = un pelo
angle-eighth = 1/8 de vuelta
angle-quarter = 1/4 de vuelta
angle-half = 1/2 vuelta
angle-three-quarters = 3/4 de vuelta
angle-turn = 1 vuelta o más
not-judged-not-reached = fuera de alcance o sin tiempo
not-judged-alive = algo allí sigue con tensión
not-judged-sealed = sellado por el fabricante
not-judged-no-tool = falta la herramienta o el medidor adecuado
not-judged-for-qualified = queda para una persona calificada
not-judged-other = otro motivo

## Steps of a walk

phase-before = antes de empezar
phase-taking-away = el corte de energía
phase-at-bays = el trabajo en los compartimientos
phase-powering-up = el regreso de la energía
phase-ended = el final
bay-stage-shut = aún sin abrir
bay-stage-open = abierto
bay-stage-closed = cerrado, todo contado
no-exception-ac = Este grupo lleva CA, y para CA no hay excepción.
no-exception-switch = Un interruptor aguas arriba puede desconectar este grupo.
no-exception-too-high = Su tensión más alta posible es de 50 V o más.
no-exception-not-noted = No está anotada la tensión más alta de una fuente que llega hasta él.

## As left

alone-not-to-tighten = no se debe apretar
alone-no-figure = no hay valor para él
alone-no-tool = falta la herramienta adecuada
alone-for-qualified = queda para una persona calificada
damage-heat = señales de calor
damage-melted = aislamiento fundido
damage-corrosion = corrosión
damage-strands = hilos rotos
damage-insulation-caught = aislamiento bajo la mordaza
damage-too-many = más conductores de los permitidos
damage-moisture = humedad
damage-chafed = rozado o roído
damage-cracked = cuerpo agrietado o flojo

## Dead proof

meter-contact = medidor de contacto
meter-proximity = detector de proximidad
lapse-pause = el recorrido se detuvo un tiempo
lapse-restart = el teléfono o la computadora se reinició
lapse-idle = no se anotó nada durante más de 30 minutos (límite nuestro)
lapse-clock-jump = los relojes no coinciden
lapse-found-live = se halló un conductor con tensión
lapse-isolation = se cambió una fuente o una prueba

## Sources

source-kind-shore = toma externa
source-kind-generator = generador
source-kind-inverter = inversor
source-kind-solar = solar
source-kind-tow-link = enlace con el vehículo remolcador
source-kind-engine-link = enlace con la batería del motor
source-kind-portable = unidad portátil
source-kind-chassis-battery = batería del chasis
source-kind-house-battery = batería de vivienda
presence-have = Tiene
presence-have-not = No tiene
presence-not-sure = No es seguro: búsquela, cuenta como conectada
isolation-unplug = desenchufe, con el enchufe en la mano o bajo llave
isolation-switch = abra su interruptor y bloquéelo
isolation-lead-off = quite su cable del poste y encíntelo
isolation-never = no se puede cortar: sus postes siguen con tensión

## Rig

rig-kind-motorhome = casa rodante con motor
rig-kind-trailer = remolque
service-none = sin toma externa
service-30a-120v = 30 A, 120 V
service-50a-120-240v = 50 A, 120/240 V
side-left = izquierda
side-right = derecha
side-front = frente
side-back = atrás
side-inside = adentro
side-roof = techo
side-under = debajo
device-kind-inlet = entrada de toma externa
device-kind-surge-device = protector contra sobretensiones
device-kind-transfer-switch = interruptor de transferencia
device-kind-ac-panel = tablero de distribución, CA
device-kind-dc-panel = tablero de distribución, CC
device-kind-converter = convertidor
device-kind-inverter = inversor
device-kind-battery-bank = banco de baterías
device-kind-battery = batería
device-kind-fuse-block = fusible de alta corriente
device-kind-shunt = derivador (shunt)
device-kind-busbar = barra colectora
device-kind-disconnect = seccionador
device-kind-solar-controller = controlador solar
device-kind-dc-link = cargador CC-CC o aislador
device-kind-hydraulic-pump = bomba hidráulica
device-kind-actuator = motor de extensión, gato o escalón
device-kind-control-board = tarjeta de control
device-kind-water-pump = bomba de agua
device-kind-generator = generador
device-kind-outlet = tomacorriente
device-kind-ground-bond = unión a tierra
device-kind-junction-box = caja de empalmes
device-kind-detector = detector o alarma
device-kind-tow-socket = conector de remolque
device-kind-other = otro dispositivo
supply-kind-ac = CA
supply-kind-dc = CC
set-system-split-phase = 120/240 V: L1, L2, N, G
set-system-single-phase = 120 V: L, N, G
set-system-dc = CC: positivo, negativo, chasis
set-system-bond = tierra y uniones
conductor-l1 = L1
conductor-l2 = L2
conductor-l = L
conductor-n = N
conductor-g = G
conductor-plus = +
conductor-minus = −
conductor-chassis = chasis

## Points and fastenings

look-kind-leak = fuga
look-kind-moisture = humedad
look-kind-chafe = aislamiento rozado
look-kind-rodent = roedores
look-kind-heat-mark = marcas de calor
look-kind-hydraulic = conexiones hidráulicas: solo mirar, nunca apretar con presión
look-kind-general = revisión visual general
fastening-pressure-screw = tornillo opresor o placa de presión
fastening-split-bolt = conector de perno partido
fastening-device-screw = tornillo de un dispositivo de cableado
fastening-board-screw = tornillo de tarjeta, relé o contactor
fastening-block-screw = tornillo de bornera
fastening-stud = zapata en espárrago
fastening-bolt = zapata o barra atornillada
fastening-battery-post = poste de batería
fastening-wing-nut = tuerca mariposa
fastening-shear-bolt = perno fusible
fastening-push-in = borne de inserción directa
fastening-spring-clamp = borne de resorte
fastening-lever = borne de palanca
fastening-blade = terminal plano enchufable
fastening-plug-on-breaker = interruptor automático enchufable
fastening-bolt-on-breaker = interruptor automático atornillado
fastening-plug = conector solar o de alta corriente
fastening-wire-connector = conector de torsión
fastening-crimp = empalme o barril prensado
fastening-piercing = dispositivo de perforación
fastening-chassis-screw = trenza o tornillo en el chasis
fastening-sealed = dispositivo sellado
fastening-cell-link = puente entre celdas
fastening-sense-lead = cable de medición
drive-slotted = ranura
drive-hex = cabeza hexagonal
drive-allen = hexágono interior
drive-square = cuadrado interior
drive-cross = cruz
drive-star = estrella
landing-bare = conductor desnudo
landing-ferrule = puntera
landing-ring = zapata de ojo
landing-fork = terminal de horquilla
landing-receptacle = receptáculo plano
nut-none = sin tuerca
nut-plain = tuerca simple
nut-nylon = tuerca con inserto de nailon
nut-over-jam = tuerca sobre contratuerca
nut-wing = tuerca mariposa
washer-none = sin arandela
washer-flat = arandela plana
washer-split = arandela partida
washer-spring = arandela de resorte (Belleville)
washer-toothed = arandela dentada
locking-none = sin seguro
locking-thread-locker = fijador de roscas
locking-witness-mark = marca de pintura
bolt-grade-sae2 = SAE grado 2
bolt-grade-sae5 = SAE grado 5
bolt-grade-sae8 = SAE grado 8
bolt-grade-iso4-6 = clase 4.6
bolt-grade-iso4-8 = clase 4.8
bolt-grade-iso5-8 = clase 5.8
bolt-grade-iso8-8 = clase 8.8
bolt-grade-iso10-9 = clase 10.9
bolt-grade-a2-70 = inoxidable A2-70
bolt-grade-silicon-bronze = bronce al silicio
bolt-grade-brass = latón
bolt-grade-copper = cobre
material-copper = cobre
material-tinned-copper = cobre estañado
material-aluminium = aluminio
strands-solid = sólido
strands-stranded = trenzado
strands-fine = de hilos finos
role-power = fuerza
role-ground = tierra o unión
role-control = control o señal
thread-state-dry = seca
thread-state-greased = engrasada o mojada
torque-basis-label = etiqueta de la pieza
torque-basis-document = documento del fabricante
recheck-unsaid = el fabricante no dice nada de revisar otra vez
recheck-full-value = el fabricante pide aplicar otra vez el valor completo
recheck-never = el fabricante dice que no se vuelva a apretar
tool-kind-click-wrench = llave de clic
tool-kind-click-driver = destornillador de clic
tool-kind-indicating = herramienta con indicador
tool-kind-preset = herramienta de valor fijo

## Findings: the name, and under .do what to do

finding-moved-again = Se movió otra vez
    .do = No lo ajuste de nuevo: recorte y rehaga, o renueve zapata y tornillería.
finding-moved-left = Se movió y quedó así
    .do = Consiga el valor o la herramienta, y ajuste o rehaga.
finding-was-apart = El conductor estaba fuera
    .do = Vea por qué salió. Revíselo otra vez después de un día u 80 km.
finding-out-of-service = Fuera de servicio
    .do = Déjelo desconectado y etiquetado hasta repararlo.
finding-damaged = Daño
    .do = No lo use. Busque la causa y renueve lo dañado.
finding-worn = Desgaste
    .do = Busque la causa, limpie o renueve antes de la temporada.
finding-too-many-conductors = Más conductores de los permitidos
    .do = Un conductor por terminal, salvo que su marca diga más (NEC 110.14(A)). Pase los demás a otro.
finding-wire-outside-range = Conductor fuera de los calibres marcados
    .do = Cambie la terminal o el conductor para que correspondan (NEC 110.14(A)).
finding-set-off-figure = Ajustado a otro valor
    .do = Verifique el valor. No agregue vueltas; rehaga si quedó por encima.
finding-look-trouble = Visto en la revisión
    .do = Busque la causa y repárela antes de la temporada.
finding-not-reached-alive = Sin evaluar: sigue con tensión
    .do = No lo toque. Que lo vea una persona calificada.
finding-bad-reading = Lectura no segura
    .do = Mantenga cortada esa energía hasta hallar la causa y leer bien.
finding-odd-reading = Lectura cerca de un límite
    .do = Mida otra vez con carga, y en otra toma.
finding-source-left-away = Fuente dejada desconectada
    .do = Déjela etiquetada. Anote cuándo debe volver.
finding-bay-left-open = Compartimiento abierto
    .do = No devuelva la energía. Compruebe otra vez la ausencia de tensión, cierre, cuente herramientas y tapas.
finding-source-unknown = Fuente no encontrada
    .do = Búsquela. Hasta entonces cuenta como conectada.
urgency-before-use = antes de volver a usarlo
urgency-soon = antes de la temporada
urgency-next-walk = en el próximo recorrido
decision-mended = reparado, cerrado
decision-licensed = se pide a una persona con licencia
decision-ourselves = lo reparamos nosotros después
decision-next-walk = se revisa en el próximo recorrido
decision-accepted = queda así, con motivo, cerrado

## Units

torque-unit-n-m = N·m
torque-unit-lbf-in = libras-pulgada
torque-unit-lbf-ft = libras-pie
torque-unit-kgf-cm = kilogramos-fuerza centímetro
voltage-unit-v = V
voltage-unit-mv = mV
current-unit-a = A
current-unit-ma = mA
distance-unit-km = km
distance-unit-mi = millas
length-unit-mm = mm
length-unit-in = pulg

## Torque advice

torque-action-check-then-set = Revise, ajuste solo lo que se movió
torque-action-look-and-tug = Mire y jale
torque-action-leave-alone = No lo toque
torque-action-remake = Rehaga
torque-action-ask-maker = Pregunte al fabricante
torque-action-refer = Solo mirar
found-by-check-screw = Mire, luego con los dedos: ¿cable fuera, tornillo flojo? Después el torque de revisión y un jalón a lo largo del cable, sin torcer.
found-by-check-lug = Mire, luego la zapata con el dedo: ¿floja? Sujete la tuerca interior y aplique el torque de revisión.
found-by-check-spring-washer = Mire: ¿arandela de resorte aplastada o agrietada? Zapata con el dedo y luego el torque de revisión.
found-by-check-post = Mire, luego gire la mordaza con la mano: ¿floja? Después el torque de revisión.
found-by-full-value = Mire, luego con los dedos. El fabricante pide el valor completo: aplíquelo una vez, despacio.
found-by-lug-by-finger = Mire, luego la zapata con el dedo. Sin torque: el roce de la tuerca no prueba nada.
found-by-mark = Mire: ¿marca de pintura alineada? No gire nada.
found-by-twist-clamp = Mire, luego gire la mordaza con la mano. Sin herramienta.
found-by-tug = Mire, luego jale a lo largo del cable, sin torcer. Sin herramienta.
found-by-pull-each = Sujete el cuerpo; jale cada conductor suavemente, 15 N como máximo (regla nuestra). ¿Cuál cedió?
found-by-seat-and-heat = Compruebe primero corriente cero. Luego mire: ¿asentado hasta el tope, marcas de calor?
found-by-look = Solo con los ojos. Sin manos ni herramientas.
left-by-set-once = Ajuste una vez al valor completo, jale a lo largo del cable, pinte una marca.
left-by-set-stud = La zapata mayor contra la cara, sin arandela en el paso de corriente. Ajuste una vez, pinte una marca.
left-by-set-spring-washer = Ajuste al valor del fabricante, sin vuelta extra. Pinte una marca.
left-by-set-post = Ajuste al valor del fabricante. El negativo se conecta al final.
left-by-cut-back = Recorte, pele de nuevo, coloque, ajuste una vez, jale, pinte una marca.
left-by-cut-back-aluminium = Recorte, cepille, inhibidor en el conductor, no en la rosca. Ajuste una vez, sin más vueltas después.
left-by-remake-lug = Renueve o limpie zapata, caras y tornillería. Ajuste una vez, pinte una marca.
left-by-new-nut = Tuerca nueva, o fijador de roscas nuevo. Luego ajuste una vez.
left-by-strip-anew = Pele de nuevo e inserte hasta el tope. Jale.
left-by-remake-splice = Haga de nuevo el empalme o conector. Jale.
left-by-remake-chassis = Metal limpio y desnudo, arandela dentada, luego apriete. Mantenga el lugar seco.
left-by-replace = Reemplácelo por una pieza nueva.
left-by-out-of-service = Si está flojo: deje el circuito fuera de servicio hasta tener el valor del fabricante.
left-by-refer = Déjelo al fabricante o a una persona calificada.
torque-caution-battery-live = Una batería no se apaga: sus postes siguen con tensión. Negativo fuera y encintado primero, conectado al final.
torque-caution-zero-current = No lo saque ni lo meta con carga: compruebe antes corriente cero.
torque-caution-hold-jam-nut = Sujete la tuerca interior o contratuerca, o girará el espárrago.
torque-caution-split-washer = Una arandela partida no asegura nada. Revise como si no estuviera.
torque-caution-spring-washer = Arandela de resorte aplastada o agrietada: reemplácela. No agregue vuelta.
torque-caution-fork-lug = Un terminal de horquilla se sale cuando el tornillo afloja.
torque-caution-wing-nut = Una tuerca mariposa solo aprieta a mano: no es para alta corriente. Prevea una hexagonal.
torque-caution-fine-strands = Los hilos finos llevan puntera, o una terminal marcada para ellos. Nunca los estañe.
torque-caution-aluminium = El aluminio cede: nunca agregue vueltas. Si está flojo, recorte y rehaga.
torque-caution-mark-shows-rotation = Una marca alineada muestra que no giró. No muestra la fuerza de apriete.
torque-caution-thread-locker = Al girar se rompe el fijador de roscas. Roto: hágalo de nuevo.
torque-caution-nylon-nut = El inserto de nailon roza: el torque no prueba nada del apriete.
torque-caution-combination-drive = La cabeza acepta varias herramientas. El valor va con la que se usa.
torque-caution-greased-thread = Rosca engrasada o mojada: el valor en seco no vale. Límpiela y séquela, o consiga el valor del fabricante.
torque-caution-foot-pounds = Dice libras-pie; lo usual son libras-pulgada, 12 veces menos. Lea otra vez la etiqueta.
torque-caution-far-from-table = El valor del fabricante está lejos de lo que dan las tablas para esta pieza. Lea otra vez la etiqueta.
torque-caution-control-circuit = Las tablas de fuerza no cubren circuitos de control y señal. Pregunte al fabricante.
torque-caution-calculated = Calculado para el perno, no dado para la pieza. El valor del fabricante va primero.
torque-caution-from-memory = Los valores de la tabla son de memoria de la norma. Verifíquelos antes de confiar.
torque-caution-tables-differ = Las tablas publicadas no coinciden aquí. Se toma el menor que corresponde.
torque-caution-maker-full-value = El fabricante pide aplicar otra vez el valor completo. Se sigue y se anota así.
torque-caution-maker-never = El fabricante dice que no se vuelva a apretar. Solo mirar.
torque-caution-moved-before = Se movió en el recorrido anterior. Si se mueve otra vez: rehaga, no ajuste.
torque-caution-crowded = Hay más conductores de los permitidos: el apriete no es confiable. Pase los demás antes de volver a usarlo.
torque-caution-size-outside = El conductor está fuera de los calibres marcados: el apriete no es confiable. Cambie uno de los dos.
torque-caution-out-of-service-if-loose = Sin valor. Si está flojo, deje el circuito fuera de servicio hasta tenerlo.
torque-missing-maker-torque = el torque del fabricante, de la etiqueta o un documento
torque-missing-wire-size = el calibre del conductor
torque-missing-size-in-table = un calibre que esté en la tabla
torque-missing-drive = el tipo de cabeza del tornillo
torque-missing-drive-in-table = un tipo de cabeza que esté en la tabla
torque-missing-socket-size = la medida entre caras del hueco
torque-missing-slot-width = el ancho de la ranura
torque-missing-slot-length = el largo de la ranura en su fondo
torque-missing-thread = la rosca
torque-missing-pitch = el paso de la rosca
torque-missing-grade = el grado del perno o espárrago
torque-missing-dry-thread = una rosca limpia y seca, o un valor para la engrasada
basis-kind-label = etiqueta
basis-kind-document = documento del fabricante
basis-kind-table = tabla de una norma
basis-kind-calculation = calculado
known-second-hand = de segunda mano, de una copia o cita
known-memory = de memoria de la norma
certainty-high = varias copias coinciden
certainty-medium = una copia, o memoria comprobada con fórmula
certainty-low = de oídas
standing-default = vale donde la pieza no trae valor
standing-comparison = para comparar, nunca para ajustar
standing-geometry = para cálculo
table-nec-annex-i1 = UL 486A-B y NEC Anexo I, tabla I.1 (NEC 2017 a 2023, columna B)
table-nec-annex-i2 = UL 486A-B y NEC Anexo I, tabla I.2 (NEC 2017 a 2023)
table-nec-annex-i3 = UL 486A-B y NEC Anexo I, tabla I.3 (NEC 2017 a 2023)
table-neta-100-12-1 = NETA ATS y MTS, tabla 100.12.1 (edición no anotada)
table-neta-100-12-2 = NETA ATS y MTS, tablas 100.12.2 a 100.12.4 (edición no anotada)
table-nema-cc1 = NEMA CC 1, torque de pernos (2009)
table-switch-maker = manual de un fabricante de interruptores de transferencia, espárragos grado 5 (sin fecha)
table-telecom-maker = manual de un fabricante de plantas de CC para telecomunicaciones, grado 2 (sin fecha)
table-supply-maker = manual de un fabricante de fuentes ininterrumpibles, arandelas de resorte (sin fecha)
table-battery-maker = manual de un fabricante de baterías de litio, en seco (sin fecha)
table-iec-60947-1-4 = IEC 60947-1 tabla 4 e IEC 60999-1 (edición no anotada)
table-threads = ASME B1.1, ISO 261 e ISO 262, pasos
table-proof-stress = SAE J429, ISO 898-1 e ISO 3506-1, tensión de prueba
table-nut-factors = forma corta de texto T = K·D·F, factor de tuerca K
finish-plain-dry = acero sin recubrir, seco
finish-zinc-dry = cincado, seco
finish-zinc-oiled = cincado, apenas aceitado
finish-stainless-dry = inoxidable con inoxidable, seco
finish-stainless-antiseize = inoxidable con inoxidable, antiaferrante

## Columns of the torque tables

table-column-slot-small = ranura de hasta 3/64 pulg de ancho y hasta 1/4 pulg de largo
table-column-slot-large = ranura de más de 3/64 pulg de ancho o más de 1/4 pulg de largo
table-column-hex-split-bolt = hexágono, conector de perno partido
table-column-hex-other = hexágono, otros conectores
table-column-narrow = ranura de menos de 3/64 pulg
table-column-wide = ranura de 3/64 pulg o más
table-column-torque = torque
table-column-sae2 = SAE grados 1 y 2
table-column-sae5 = SAE grado 5
table-column-sae7 = SAE grado 7
table-column-sae8 = SAE grado 8
table-column-bronze-dry = bronce al silicio, seco
table-column-bronze-lubricated = bronce al silicio, lubricado
table-column-aluminium-lubricated = aluminio, lubricado
table-column-stainless = inoxidable 18-8, sin recubrir
table-column-bronze-steel-stainless = bronce al silicio, acero galvanizado o inoxidable
table-column-wire = conexiones de cable
table-column-head = apriete por la cabeza
table-column-one-washer = una arandela de resorte
table-column-two-washers = dos arandelas de resorte
table-column-column-2 = columna II
table-column-column-3 = columna III

## Due

due-reason-months = los meses llegan primero
due-reason-distance = la distancia llega primero, según el odómetro
due-reason-never-walked = aún no hay un recorrido completo

## Readings while power comes back

verdict-expected = Como se espera
verdict-watch = Cerca de un límite
verdict-stop = Alto
verdict-unknown = Sin medir, no se sabe
safe-act-go-on = Continúe.
safe-act-supply-away = Baje el interruptor de la toma y desenchufe. Revise toma y cable; compruebe ausencia de tensión antes de abrir.
safe-act-dont-plug-in = No enchufe. Baje el interruptor de la toma; avise a quien la administra.
safe-act-dont-touch = No toque la carrocería. Baje el interruptor de la toma y desenchufe. Que nadie suba ni baje hasta hallar la causa.
safe-act-battery-off = Negativo fuera, o déjelo fuera. Revise polaridad y cada unión.
safe-act-out-of-service = Deje esa parte apagada y etiquétela hasta repararla.
safe-act-measure-later = Mídalo cuando se pueda. Hasta entonces no se sabe nada.
limit-basis-ansi-c84-1-b = ANSI C84.1 rango B, de memoria
limit-basis-practice = práctica común, sin fuente
limit-basis-ours = regla nuestra
reading-dc-polarity = Polaridad de CC, antes de conectar el negativo
reading-dc-bus = Barra de CC, positivo a negativo
reading-supply-l1-n = Toma de suministro, L1 a N, antes de enchufar
reading-supply-l2-n = Toma de suministro, L2 a N, antes de enchufar
reading-supply-l1-l2 = Toma de suministro, L1 a L2, antes de enchufar
reading-supply-l-g = Toma de suministro, L a G, antes de enchufar
reading-supply-n-g = Toma de suministro, N a G, antes de enchufar
reading-hot-skin = Metal de la carrocería a una varilla en suelo húmedo, antes de tocar
reading-leg-1 = Tomacorriente de la línea 1, L a N
reading-leg-2 = Tomacorriente de la línea 2, L a N
reading-outlet-n-g = Tomacorriente, N a G
reading-load-1-leg-1 = Línea 1, con carga resistiva en la línea 1
reading-load-1-leg-2 = Línea 2, con carga resistiva en la línea 1
reading-load-2-leg-1 = Línea 1, con carga resistiva en la línea 2
reading-load-2-leg-2 = Línea 2, con carga resistiva en la línea 2
reading-gfci = GFCI y AFCI probados
reading-inverter-alone = Inversor solo, en un tomacorriente
reading-generator-alone = Generador solo, transferencia vista
reading-detectors = Detector de gas y alarmas funcionando
reading-breakaway = Interruptor de desprendimiento del remolque

## A service read from its pairs

service-fault-healthy = Nada mal que estas lecturas puedan mostrar
service-fault-low-service = Sano, pero con tensión baja
service-fault-high-service = Sano, pero con tensión alta
service-fault-supply-208 = Suministro de 208Y/120 V donde se espera 120/240 V
service-fault-one-leg-adapter = Las dos líneas en un solo conductor, como con un adaptador de 30 A
service-fault-weak-neutral = Neutro flojo: una mala unión
service-fault-open-neutral = Neutro abierto
service-fault-weak-leg = Línea floja: una mala unión
service-fault-open-leg = Línea abierta
service-fault-line-neutral-swapped = Línea y neutro cambiados
service-fault-line-ground-swapped = Línea y tierra cambiadas: la carrocería tiene tensión
service-fault-open-ground = Tierra abierta, o fuente sin unión de neutro y tierra
service-fault-neutral-ground-mixed = Neutro y tierra cambiados, o unidos por segunda vez
service-conductor-line-1 = línea 1
service-conductor-line-2 = línea 2
service-conductor-both-lines = las dos líneas
service-conductor-neutral = el neutro
service-conductor-ground = la tierra de equipos
service-place-outlet = en la toma de suministro, antes de enchufar
service-place-coach = en el vehículo, enchufado
service-standing-sound = Sin falla que estas lecturas puedan mostrar; puede haber ocultas
service-standing-open = Sin resolver: una falla también explica las lecturas
service-standing-faulty = Solo una falla explica las lecturas
service-standing-unexplained = Nada conocido aquí explica las lecturas
service-ask-read-pair = Lea un par más, con todo apagado.
service-ask-low-impedance = Lea otra vez los pares con el medidor en baja impedancia.
service-ask-load-leg-1 = Carga resistiva en la línea 1, electrónica apagada, y otra vez los pares.
service-ask-load-leg-2 = Carga resistiva en la línea 2, electrónica apagada, y otra vez los pares.
service-ask-continuity-dead = Solo con ausencia de tensión comprobada: continuidad de cada conductor, en ohmios.
service-ask-body-to-soil = Metal de la carrocería a una varilla en tierra húmeda, antes de que nadie lo toque.
service-ask-all-again = Lea otra vez todos los pares.
pair-l1-n = L1 a N
pair-l2-n = L2 a N
pair-l1-l2 = L1 a L2
pair-l1-g = L1 a G
pair-l2-g = L2 a G
pair-n-g = N a G
voltage-band-ansi-service-a = ANSI C84.1 rango A en el servicio
voltage-band-ansi-service-b = ANSI C84.1 rango B en el servicio
voltage-band-ansi-use-a = ANSI C84.1 rango A en el aparato
voltage-band-ansi-use-b = ANSI C84.1 rango B en el aparato
voltage-band-cut-out = donde los protectores suelen cortar
band-certainty-high = poca duda
band-certainty-medium = alguna duda
band-certainty-low = se citan también otras cifras
grounds-memory = de memoria de la norma
grounds-common-practice = práctica común, sin fuente
wire-table-nec-ch9-table-8 = NEC capítulo 9 tabla 8, a 75 °C
wire-table-iec-60228 = IEC 60228, a 20 °C

## A joint by its heat

heat-compared-similar = frente a una pieza igual con carga igual
heat-compared-ambient = frente al aire de alrededor
heat-class-unclassed = Menos de 1 °C: nada que hacer
heat-class-possible = Posible deficiencia: investigue
heat-class-probable = Deficiencia probable: repare cuando haya tiempo
heat-class-monitor = Vigile hasta que se corrija
heat-class-major = Discrepancia mayor: repare de inmediato
heat-surface-covered = sobre aislante, pintura o cinta junto a la unión
heat-surface-bare-metal = sobre metal desnudo
heat-surface-contact = con una sonda que toca, ausencia probada antes
heat-caution-bare-metal-reads-low = El metal desnudo muestra menos calor del que tiene. Mida sobre el aislante de al lado.
heat-caution-not-constant = Una unión floja no conserva su resistencia: el aumento a carga normal es solo una orientación.
heat-caution-load-unknown = Sin la corriente no se sabe nada del aumento a carga normal.
heat-caution-no-trip = Una unión al rojo no dispara disyuntor, fusible ni GFCI. Quite la carga; no los espere.

## A DC bank by its readings

dc-nominal-12v = 12 V
dc-nominal-24v = 24 V
dc-nominal-48v = 48 V (pasa de 50 V en uso)
bank-finding-reversed = Positivo y negativo están cambiados
bank-finding-high = Por encima de lo que da la carga
bank-finding-no-voltage = Casi sin tensión. No prueba ausencia: un interruptor electrónico puede volver a cerrar.
bank-finding-low = Por debajo de un banco casi vacío
bank-finding-large-drop = Con carga se pierde más del 10 %
bank-finding-drop = Con carga se pierde más del 3 %
bank-finding-rises = La tensión subió con carga: algo está cargando, o las lecturas se cambiaron
bank-finding-borderline = Dentro del error del medidor respecto a un límite
drop-class-within-3-percent = hasta el 3 %
drop-class-within-10-percent = hasta el 10 %
drop-class-over-10-percent = más del 10 %

## Por qué no se da una ley de aflojamiento

no-fit-nothing = ninguna unión se revisó después de apretarla
no-fit-none-moved = ninguna se había movido
no-fit-few-moved = se movieron menos de cinco, muy pocas para decir con qué rapidez
no-fit-one-age = todas se revisaron a la misma edad, lo que dice cuántas pero no con qué rapidez
no-fit-from-the-start = se movieron no más tarde que otras que aguantaron, como si algunas nunca hubieran estado apretadas
no-fit-no-end = ninguna curva se ajusta a lo hallado
