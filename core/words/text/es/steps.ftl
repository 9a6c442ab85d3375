### The steps of a walk: cards and keys.

## The line under the header

line-live =
    { $count ->
        [0] La energía está volviendo. Las tapas siguen puestas.
        [one] Con tensión: una fuente aún no está cortada.
       *[other] Con tensión: { $count } fuentes aún no están cortadas.
    }
line-hands-off = Compartimiento { $bay }: no toque, { $left }. Luego compruebe ausencia de tensión.
line-unproved = Fuentes cortadas. Trate como con tensión hasta comprobar cada compartimiento.
line-dead = Solo el compartimiento { $bay } sin tensión, comprobado { $time }.
line-dead-but = Compartimiento { $bay } comprobado { $time }, pero una parte sigue con tensión por excepción.

## On many cards

step-no-key = No hay tecla “{ $key }” en esta tarjeta. Oprima una de las mostradas.
step-why = ¿Por qué?
step-note = Nota, si la hay
step-reading = Lectura
step-skip = Saltar
step-damage = Daño
step-damage-what = ¿Qué daño?
step-undo = Deshacer
step-stop = Parar por ahora
step-close-early = Cerrar antes
step-end-early = Terminar aquí el recorrido

## Before

step-ready-title = Antes de empezar
step-ready-done = Así es
step-ready-without = Sin eso

## Sources

step-away-question = { $source }: ¿cortada?
step-away-search = { $source }: no es seguro que exista. Búsquela.
step-away-wait = Después no toque durante { $minutes } minutos ({ $basis }). El fin de la espera no libera nada.
step-away-key = Está cortada
step-away-kept = ¿Cómo se mantiene así? (etiqueta, candado, enchufe en mano)
step-away-not-found = Buscada, no encontrada
step-away-searched = ¿Dónde se buscó?
step-away-stays = Sigue conectada
step-back-question = { $source }: ¿conectada otra vez?
step-back-key = Está conectada
step-back-leave = Dejarla cortada

## Bays

step-open-question = Abra el compartimiento { $bay }
step-open-key = Está abierto
step-open-points =
    { $points ->
        [one] Un punto, unos { $minutes } min para abrir.
       *[other] { $points } puntos, unos { $minutes } min para abrir.
    }
step-open-fed = Llegan hasta aquí: { $sources }.
step-close-question = ¿Las cuatro son ciertas?
step-close-conductors = Conductores libres de tapa y bordes.
step-close-hardware = Tornillos y tuercas contados, todos puestos.
step-close-tools = Herramientas contadas, todas fuera.
step-close-covers = Tapa puesta.
step-close-key = Todo cierto, cerrado

## Dead proof

step-prove-title = Compartimiento { $bay }: compruebe ausencia de tensión, { $supply }
step-prove-anew = Compruebe otra vez: { $why }.
step-prove-found-live = Un conductor tiene tensión. Halle qué lo alimenta, córtelo y compruebe otra vez.
step-live-before = Lea una fuente que se sabe con tensión.
step-live-again = Lea otra vez la fuente conocida: ¿sigue funcionando el medidor?
step-live-source-ac = Para CA: la toma de suministro o una unidad de comprobación. Sin ninguna a mano, este compartimiento queda cerrado.
step-live-source-dc = Para CC: una batería.
step-live-key = Marca tensión
step-live-where = ¿Qué fuente?
step-read-question = { $pair }: ¿qué marca el medidor?
step-read-key = Anotar lectura
step-except-question = “{ $set }” no tiene interruptor aguas arriba. ¿Seguir con tensión presente?
step-except-rule = Solo con menos de 50 V CC, y con un motivo. Si no, solo mirar.
step-look-only = Solo mirar
step-look-only-at = { $point }, sin manos ni herramientas
step-except-key = Seguir, a sabiendas

## Points

step-found-turned = ¿Se movió?
step-found-tug = Jale cada conductor. ¿Cedió?
step-found-looked = Mire y jale. ¿Cómo lo encontró?
step-found-how-far = ¿Cuánto lo giró?
step-found-held-click = hizo clic, sin giro
step-found-moved-click = giró y luego hizo clic
step-found-held-tug = no cedió
step-found-moved-tug = cedió un poco
step-found-looked-note = visto y jalado, nada raro
step-found-loose = se mueve con la mano
step-found-apart = el conductor está fuera
step-look-clear = Sin novedad
step-look-trouble = Hay algo
step-look-what = ¿Qué hay?
step-left-question = ¿Qué hizo?
step-left-set = Ajustado a { $torque }
step-left-remade = Rehecho
step-left-out = Fuera de servicio
step-left-how-out = ¿Cómo se impide que se use?
step-left-alone = Quedó como está

## Power back

step-power-title = Devolver la energía
step-power-question = ¿Tapas puestas, nadie en un compartimiento?
step-power-order = Primero CC, luego medir el suministro, luego la toma externa, luego una carga a la vez.
step-power-key = Empezar
step-measure-where = ¿Dónde? (un lugar que no exija quitar tapas)
step-measure-works = Funciona
step-measure-fails = No funciona
step-measure-not = Sin medir
step-unsafe-question = No es seguro seguir. Haga esto primero y mida otra vez.
step-end-title = El final del recorrido
step-end-question = ¿Terminado?
step-end-tools = Herramientas de clic al valor más bajo. Gas abierto al final, detector funcionando.
step-end-key = Terminar el recorrido
step-stopped-title = Detenido
step-stopped-question = ¿Seguir donde se detuvo? Cada compartimiento se comprueba otra vez antes de tocarlo.
step-stopped-key = Seguir

## Cautions of single steps

caution-shore = Interruptor principal del vehículo abajo, el de la toma abajo, desenchufe. Enchufe en la mano o bajo llave.
caution-battery-back = Polaridad comprobada primero. Precargue como dice el fabricante; negativo al final. Hace arco: aleje la cara.
caution-shore-back = Interruptores de ramal abajo. Enchufe, suba el de la toma. No toque la carrocería antes de medirla.
caution-ac-back = Una fuente de CA a la vez. Véala transferir, y ninguna otra vía.
caution-dc-back = Después de su batería, sin carga.
caution-supply-outlet = Con tensión: solo persona calificada. Puntas protegidas, una mano; o lea un indicador fijo, o anote “sin medir”.
caution-excepted = Con tensión por excepción: { $set }, { $device }. Una mano, herramienta aislada.

## Rigs

rigs-empty = Aún no hay vehículos en esta bitácora. Empiece desde un modelo parecido al suyo, o cargue sus archivos.
rigs-walk-open = hay un recorrido abierto
rigs-no-such = No hay vehículo “{ $name }” en esta bitácora. Nombre uno de la lista.
rigs-several = Hay varios vehículos en esta bitácora. Nombre el que quiere.
rig-points = { $total } puntos
rig-points-done = { $done } de { $total } puntos
rig-moved = { $moved } se movieron, { $loose } flojos, { $apart } con cable fuera
rig-findings =
    { $count ->
        [0] Sin hallazgos abiertos.
        [one] Un hallazgo abierto.
       *[other] { $count } hallazgos abiertos.
    }

## Result, findings, due

result-open = Este recorrido está abierto.
result-whole = Recorrido hasta el final.
result-early = Terminado antes: { $why }
result-moved = { $point }: { $found }; quedó: { $left }
findings-no-day = “{ $found }” no es un día. Se espera año, mes y día, como 2027-04-30.
findings-no-such = No hay hallazgo número { $number }. La lista muestra los números.
due-second-look = Segunda revisión de lo ajustado o rehecho, desde el { $date } o después de 80 km: { $points }.

## What was noted

told-recorded = Anotado.
told-dead = Sin tensión.
told-live = CON TENSIÓN. El compartimiento queda bloqueado otra vez. Puede alimentarlo: { $sources }. Manos fuera, halle la fuente, córtela y compruebe otra vez.
told-clock-back = El reloj de esta máquina está antes de una entrada anterior. Se anota así, con una marca.
told-lapse = Las pruebas anteriores ya no valen: { $why }.
told-struck = Deshecho.

## Torque by hand

torque-tool-fits = { $tool }: ponga { $torque }.

## Checking the logbook

verify-whole = { $entries } entradas concuerdan. Última huella { $digest }.
verify-broken = La entrada { $seq } no concuerda: { $why }. Lo anterior está sano. Conserve el archivo y restaure al lado la última copia.
verify-chain = La cadena delata accidentes y cambios torpes, no a un falsificador que tenga el archivo.

## Points and the book

point-landed = { $landed } conectados de { $allowed } permitidos
book-nothing = Con eso nada cambia en el libro.
book-no-code = No hay registro con el código { $code } en este vehículo.
book-no-equals = “{ $found }” no es un ajuste. Se espera nombre, signo igual y valor, como torque=45 lbf.in.

## Scripts

script-at = Línea { $line }: { $what }
script-head = Esto no es encabezado de un guion ({ $found }). Se espera algo como { "{" }"script": 1, "seed": "my-walk"{ "}" }.
script-newer = El guion tiene versión { $found }; aquí se leen versiones hasta 2. Use una versión más nueva de este programa.
script-since = Este paso llegó con la versión { $since } de los guiones. Escriba esa versión en el encabezado, para que un programa anterior avise de que el guion es más nuevo.
script-line = Esta línea no es un paso ({ $found }). La lista de pasos está en docs/scripts.md.
script-order = La hora de esta línea es anterior a la de otra previa. Las líneas de un guion van en orden de hora.
script-no-code = Nada en este vehículo se llama “{ $code }”. Use un código del vehículo.
script-missing = Con lo que está aquí no se puede hacer este paso: revise { $field }.
script-file = Un archivo que esta línea nombra no se puede usar ({ $found }).
script-not-refused = Esta línea está marcada como una que las reglas rechazan, y no la rechazaron. Quite la marca o corrija la línea.

## Replaying a script

replay-refused = La línea { $line } se rechaza, como debe ser: { $why }
replay-start = Empieza el recorrido.
replay-away = Cortada: { $name }
replay-open = Abierto: compartimiento { $name }
replay-close = Cerrado: compartimiento { $name }
replay-power = Vuelve la energía.
replay-back = Conectada: { $name }
replay-pause = Detenido por ahora.
replay-resume = Se siguió.
replay-undo = Deshecho.
replay-left = Corregido: { $name }
replay-end = Termina el recorrido.
replay-other = { $name }
try-begin = Un vehículo de muestra, con todo su recorrido repetido desde un guion, en la carpeta { $folder }.
try-end = Para ver más: baywalk --store { $folder } rig, findings, due, verify; y abra el informe en un navegador.

## Lists of the result

result-out-of-service = Queda fuera de servicio:
result-not-judged = Sin evaluar ({ $count }):
result-alive = Con tensión ahora:
result-had-moved = Lo que se había movido, y cómo quedó:
result-findings = Hallazgos abiertos ({ $count }):

## Starting, reporting, layouts

start-somebody = alguien
report-none = Este vehículo aún no se ha recorrido. Empiece con: baywalk walk.
layout-sample-motorhome = una casa rodante inventada de 50 A, completa
layout-sample-trailer = un remolque inventado de 30 A, completo
layout-starter-motorhome-50a = para empezar una casa rodante de 50 A
layout-starter-trailer-30a = para empezar un remolque de 30 A
layout-starter-van-dc = para empezar una furgoneta sin CA
layout-starter-empty-motorhome = para armar el libro de una casa rodante en el primer recorrido
layout-starter-empty-trailer = para armar el libro de un remolque en el primer recorrido
book-no-column = No hay columna “{ $found }” en la tabla de puntos. docs/rig-files.md las enumera.
torque-no-terminal = Una revisión visual no tiene torque. Describa una terminal: al menos su role y fastening.

## Ajustar la herramienta

step-tool-title = Ajuste la herramienta
step-tool-question = { $tool }: ¿ajustada a { $torque }?
step-tool-key = Está ajustada
step-tool-band = Su clase permite ±{ $percent } %: de { $low } a { $high } en la unión.

## Fotos y el libro sobre la marcha

step-photo = Foto
step-photo-file = ¿Qué archivo?
step-book = Anotar en el libro
step-book-note = agregar, cambiar o retirar un compartimento, aparato o punto
step-book-what = ¿Qué? Por ejemplo: add point code=F15 device=FTS name=terminal libre role=power fastening=stud
book-no-line = No se puede anotar “{ $found }”. Se espera, por ejemplo: add point code=F15 …, change F8 torque=45 lbf.in, retire F8.
line-excepted = Compartimento { $bay }: con tensión por excepción; aquí no se comprobó nada.
step-close-all = ¿Conductores libres, tornillos puestos, herramientas afuera, tapa puesta?
step-close-not-yet = Todavía no
layout-other = una plantilla
step-live-meter = Medidor: { $name }, { $category }.
step-live-other-meter = Con otro medidor
step-live-meter-name = ¿Qué medidor?
step-live-meter-category = ¿Qué categoría lleva marcada?
step-away-reaches = Llega a: { $bays }.
step-away-stays-live = Sigue con tensión después: { $sets }. Cúbralo; una sola herramienta aislada, sin joyas.
step-unsafe-away = Corte { $source } ahora
step-unsafe-leave = Dejar { $source } cortada
step-measure-load = La carga: un calefactor simple de { $least } a { $most } W (regla nuestra), electrónica apagada.
torque-role = ¿Qué lleva?
torque-fastening = ¿Qué sujeta el conductor?
findings-key-decide = Decidir
findings-ask-decision = ¿Qué se hace con esto?
findings-ask-by = ¿Para cuándo?
findings-ask-note = Una nota, como a quién se preguntó
findings-no-date = Sin fecha
