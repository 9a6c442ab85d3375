### Why an act is not taken: what, what was found, what to do.

## Why an act is not taken: what, what was found, what to do

refusal-no-rig = Aquí no hay tal vehículo. Cargue un archivo de vehículo o empiece uno desde un modelo.
refusal-no-walk = No hay un recorrido abierto para este vehículo. Empiece uno primero.
refusal-walk-open = Ya hay un recorrido abierto. Continúelo o termínelo antes, y luego haga esto.
refusal-paused = El recorrido está detenido. Reanúdelo primero; cada compartimiento necesitará otra prueba de ausencia de tensión.
refusal-not-paused = El recorrido no está detenido, así que no hay nada que reanudar. Continúe donde está.
refusal-phase-early = Todavía no: esto corresponde a { $expected }, y el recorrido está en { $found }. Termine primero { $found }.
refusal-phase-late = Ya es tarde en este recorrido: esto corresponde a { $expected }, y el recorrido está en { $found }. Déjelo para el próximo, o termine este antes y empiece otro.
refusal-not-ready = Cada punto de la lista previa se contesta antes de cortar la energía; falta este: { $item }. Contéstelo: hecho, o sin ello y por qué.
refusal-must-have = El recorrido no puede seguir sin esto: { $item }. Resuélvalo y contéstelo como hecho.
refusal-no-sources = No hay fuentes anotadas en este vehículo, así que nada se puede cortar ni comprobar. Anote cada una: toma externa, generador, inversor, solar, baterías, enlace con motor o remolcador.
refusal-source-not-away = { $source } aún no está resuelta. Al cortar: aíslela como dice su registro, o diga por qué sigue con tensión. Al devolver: conéctela, o déjela fuera y diga por qué.
refusal-source-first = { $source } va primero. Al cortar: solar antes que su batería. Al devolver: baterías antes que solar y que CA, y cada fuente antes que sus lecturas.
refusal-source-done = { $source } ya está cortada, o ya está de vuelta: no hay nada que hacer allí. Deshaga el paso anterior si fue un error.
refusal-alive-by-choice = { $bay } se queda cerrado: { $source } sigue con tensión y lo alimenta con CA. Anote sus puntos como sin evaluar, o corte esa fuente en otro recorrido.
refusal-not-in-book = No hay tal { $what } en uso en el libro del vehículo. Elija de la lista, o agréguelo primero.
refusal-photo = La foto no se guardó: su huella no tiene 64 cifras hexadecimales. Tómela otra vez.
refusal-bay-not-open = { $bay } está { $found }; para esto debe estar abierto. Ábralo y compruebe primero la ausencia de tensión.
refusal-bay-stage = { $bay } está { $found }; para esto debe estar { $expected }. Déjelo así primero.
refusal-proximity = Un detector de proximidad no prueba nada: puede callar junto a un conductor con tensión. Use un medidor cuyas puntas toquen el conductor; sin él, solo mire.
refusal-no-meter = No hay medidor de contacto, según se contestó al inicio, así que nada se puede comprobar. En este recorrido solo mire; empiece otro con medidor.
refusal-not-known-live = Esta lectura no muestra una fuente con tensión: se esperan al menos { $least } V { $supply } (regla nuestra). Revise medidor, escala, puntas y pila, y lea una fuente con tensión segura.
refusal-no-proof = Aquí no hay una prueba de { $supply } en curso, o ya no vale. Lea una fuente de { $supply } con tensión conocida, luego los pares, y otra vez esa fuente.
refusal-no-such-pair = El dispositivo no tiene tal grupo o par de conductores. Elija de su lista.
refusal-exception-isolate = Aquí no hay excepción. { $reason } Córtelo y compruebe la ausencia de tensión; lo que no se pueda cortar es solo para mirar, y de una persona calificada.
refusal-exception-note = Aquí no hay excepción. { $reason } Anótela primero en el libro: máximo de carga, o solar con frío.
refusal-exception-qualified = Aquí no hay excepción. { $reason } Solo mire; el trabajo es de una persona calificada.
refusal-locked = No toque { $point }. { $needs }
refusal-wrong-kind-terminal = { $point } es una terminal, no una revisión visual. Anote cómo se encontró: Firme, Se movió, Flojo, Cable fuera, Visto o Sin evaluar.
refusal-wrong-kind-look = { $point } es una revisión visual, no una terminal. Anote sin novedad, o lo que se vio.
refusal-noted-already = { $point } ya está anotado. Corrija la nota y diga por qué, o deshágala si es el último paso.
refusal-nothing-noted = Aún no hay nada anotado en { $point }. Anote primero cómo se encontró.
refusal-not-by = { $point } no se puede evaluar ni ajustar así; el consejo es: { $advice }. Siga su tarjeta, o anótelo como Visto o Sin evaluar.
refusal-no-tool = Esta herramienta de torque no está en uso en el libro. Elija otra, o anótela primero con su alcance.
refusal-leave-what-held = { $point } estaba firme, y lo firme no se toca: el valor completo sería reapretar. Siga con el próximo punto.
refusal-remake-not-set = { $point } se rehace, no se ajusta, por este hallazgo: { $because }. Rehágalo, o deje su circuito fuera de servicio.
refusal-cant-leave-so = { $point } está flojo, con el cable fuera o abierto por nosotros, y no puede quedar así. Ajústelo, rehágalo, o deje su circuito fuera de servicio.
refusal-waits-for-left = { $point } se movió, o estaba flojo, con el cable fuera o abierto por nosotros, y no dice cómo quedó. Anótelo antes de cerrar.
refusal-not-counted = { $bay } aún no se cierra: conductores libres, tornillería completa, herramientas fuera y tapa puesta, cada cosa vista. Cuéntelas y cierre.
refusal-bay-open = { $bay } ya está abierto. Siga en él, o ciérrelo con todo contado; hasta entonces no vuelve la energía.
refusal-reading-first = Esta lectura va primero: { $reading }. Tómela, o diga por qué no se toma.
refusal-reading-stops = No devuelva la energía: esta lectura no es segura: { $reading }. Corte lo último que volvió, busque la causa y lea otra vez.
refusal-no-such-reading = Este vehículo no pide esta lectura: { $reading }. Tome la siguiente de la lista.
refusal-measure-is-voltage = Esta lectura es una tensión: { $reading }. Escriba los voltios, o diga por qué no se midió.
refusal-measure-is-test = Esto es una prueba, no una tensión: { $reading }. Diga si funciona o no, o por qué no se hizo.
refusal-say-why = Aquí falta un motivo, lugar o nombre y no se escribió nada. Escríbalo en pocas palabras.
refusal-no-finding = No hay tal hallazgo abierto. Elija de la lista de hallazgos abiertos.
refusal-odometer-back = La lectura del odómetro es menor que una anterior. Léalo otra vez, y su unidad. Si se cambió, o si la anterior era errónea, anote eso.
refusal-nothing-to-mend = No hay anotación del odómetro que pudiera ser errónea. Anote el odómetro como está.
refusal-put-off-too-far = No se puede aplazar hasta ese día. Se espera un día por venir, a lo más 92 días desde hoy.
refusal-what-rule = regla
refusal-what-event = suceso
refusal-not-newest = Solo se puede deshacer el último paso, y este es anterior. Deshaga primero los más nuevos, o corrija la nota.
refusal-nothing-to-strike = No queda nada que deshacer en este recorrido. Para dejarlo, termínelo antes.
refusal-other = Esto no se puede hacer ahora, y nada se cambia. Siga con lo que se pide ahora.

## What a record is called in a refusal

refusal-what-source = fuente
refusal-what-bay = compartimiento
refusal-what-device = dispositivo
refusal-what-point = punto
refusal-what-tool = herramienta
refusal-what-record = registro

## Refusals of the screens themselves

refused-no-walk = No hay un recorrido abierto para este vehículo. Empiece uno primero.
refused-not-in-book = Eso no está en uso en el libro del vehículo. Elija de la lista, o agréguelo primero.

refusal-tool-not-set = No consta que { $tool } esté ajustada a ese valor. Ajústela, indíquelo y luego úsela.
refusal-name-meter = El medidor no tiene nombre. Escriba cómo se llama, para que el informe muestre que antes y después se leyó con el mismo.
refusal-meter-category = Este medidor no prueba que un conductor de CA está sin tensión: { $found }. Se espera un medidor de contacto marcado CAT II, III o IV para la tensión (regla nuestra); uno sin marca puede estallar en una falla. Sin él, solo mire.
refusal-no-route = No se sigue ningún plan, o el plan no tiene minutos. Haga primero un plan con los minutos disponibles.
