### Palabras del informe.

## Head

report-title = Informe del recorrido: { $rig }, { $day }
report-rig = { $kind }, { $service }
report-walked-by = Recorrido por { $person }
report-ended-whole = Hecho hasta el final.
report-ended-early = Terminado antes: { $why }
report-not-ended = Aún sin terminar; está en: { $phase }.
report-foot = { $edition }, hecho { $printed }
report-day-and-time = { $day }, { $time }
report-at-time = a las { $time }
report-unknown-record = ya no está en el libro

## Parts

report-part-result = Qué resultó
report-part-cautions = Precauciones
report-part-walk = Vehículo y recorrido
report-part-isolated = Energía desconectada
report-part-proved = Ausencia de tensión comprobada
report-part-bays = Como se encontró, como quedó
report-part-power = Energía devuelta
report-part-sources = De dónde vienen los valores
report-part-verify = Cómo verificar este informe

## Result

report-out = Queda fuera de servicio
report-out-none = Nada quedó fuera de servicio.
report-out-bay-open = El compartimiento { $bay } quedó abierto: no devuelva la energía.
report-out-source = { $source }, se dejó desconectada: { $why }
report-out-source-still = { $source }, no se devolvió
report-out-circuit = { $point }: { $how }
report-alive = Cuenta como con tensión
report-alive-source = { $source }: { $why }
report-alive-not-found = se buscó y no se halló
report-alive-never-away = nunca se desconectó
report-not-judged = Sin evaluar
report-not-judged-none = Todos los puntos se evaluaron.
report-not-judged-bay = { $bay }: { $points }
report-not-judged-all =
    { $count ->
        [one] su único punto, sin llegar a él
       *[other] los { $count } puntos, sin llegar a ellos
    }
report-not-judged-point = { $point } ({ $why })
report-not-reached = No se alcanzó
report-counts = Recuento
report-gone-through = { $done } de { $total } recorridos.
report-strip = El vehículo de lado, el frente a la izquierda
report-strip-reads = El vehículo de lado, el frente a la izquierda. Cada compartimiento se llena desde abajo con lo que se encontró en él, con los patrones de arriba; lo que está en blanco no se juzgó o no se alcanzó. Línea cortada: se llega por la derecha. Borde superior grueso: cerrado de nuevo. Tapa levantada: abierto.
report-strip-bay = { $bay } ({ $stage }): { $told }.
report-strip-rest =
    { $count ->
        [0] nada por recorrer
       *[other] { $count } sin alcanzar
    }
report-looked-at-means = Visto: mirado, o mirado y jalado, sin herramienta de torque. No dice que un tornillo estuviera firme.
report-moved = Qué se había movido
report-moved-caption =
    { $count ->
        [one] Un terminal se había movido, o estaba flojo o con el cable fuera
       *[other] { $count } terminales se habían movido, o estaban flojos o con el cable fuera
    }
report-moved-none = Nada se había movido entre lo evaluado.
report-moved-before = Se movieron en un recorrido anterior y no se anotaron como movidos en este: { $points }.
report-findings = Hallazgos
report-findings-none = Sin hallazgos abiertos.
report-findings-open =
    { $count ->
        [one] Un hallazgo abierto
       *[other] { $count } hallazgos abiertos
    }
report-findings-closed =
    { $count ->
        [one] Un hallazgo cerrado
       *[other] { $count } hallazgos cerrados
    }
report-finding-since = abierto desde { $day }
report-decided = Decidido: { $decision }
report-decided-by = Decidido: { $decision }, hasta { $day }
report-figure-was = El valor mostrado era { $torque }.
report-next = Cuándo otra vez
report-next-walk = Próximo recorrido
report-next-unknown = Sin calcular: el recorrido no ha terminado.
report-next-distance = o a { $distance } { $unit }, lo que ocurra primero
report-second-look = Segunda mirada
report-second-look-why = o tras { $miles } millas: lo ajustado o rehecho se asienta (práctica común por analogía)

## Cautions

report-caution-title = Antes de trabajar con este informe
report-caution-prove = Un informe no prueba ausencia de tensión. Desconecte cada fuente y compruébelo otra vez antes de abrir una tapa.
report-caution-limits = Los límites marcados “regla nuestra” son de esta herramienta. No se vio el texto de ninguna norma; cada valor dice cómo se conoce. Este informe dice lo que una persona halló un día; no certifica nada.

## Rig and walk

report-term-rig = Vehículo
report-term-kind = Tipo y servicio
report-term-person = Recorrido por
report-term-began = Empezó
report-term-last = Última entrada
report-term-scope = Abarcó
report-term-without = Se hizo sin
report-scope-whole = todo el vehículo
report-scope-plan = { $scope }; según un plan de { $minutes } minutos para los compartimentos, lo que dejó fuera está en Sin evaluar
report-scope-second-look = una segunda mirada a lo ajustado o rehecho
report-scope-bays = compartimientos { $bays }
report-without = { $item }: { $why }
report-tools = Herramientas de torque usadas
report-tools-none = No se usó herramienta de torque.
report-tool-range = { $least } a { $most }
report-col-tool = Herramienta
report-col-kind = Tipo
report-col-calibrated = Calibrada

## Isolation

report-isolated-caption = Cada fuente, como { $person } la desconectó y la devolvió
report-sources-none = No hay fuentes anotadas de este vehículo.
report-col-source = Fuente
report-col-away = Desconectada
report-col-back = Devuelta
report-away-not-found = Se buscó y no se halló; contó como conectada
report-away-stays = Quedó conectada
report-away-never = No se desconectó
report-wait = Manos afuera { $minutes } ({ $basis }).
report-back-restored = Devuelta
report-back-left = Se dejó desconectada
report-back-not = No se devolvió
report-back-never-away = Nunca se desconectó

## Proof

report-proof-method = Una fuente con tensión conocida, los pares, esa fuente otra vez, con un mismo medidor de contacto; CA y luego CC (NFPA 70E 120.5 como método, de segunda mano).
report-proof-limits = Sin tensión por debajo de { $ac } V CA y de { $dc } V CC (regla nuestra).
report-proof-caption = Una fila por comprobación, en el orden de los compartimientos
report-proof-none = Abierto; aquí no se comprobó nada.
report-proof-shut = Sin abrir: { $bays }.
report-bay-open = Este compartimiento sigue abierto.
report-col-bay = Compartimiento y tipo
report-col-known-before = Tensión conocida antes
report-col-pairs = Pares leídos
report-col-known-after = Tensión conocida después
report-col-outcome = Resultado
report-known-missing = no se leyó
report-pairs =
    { $count ->
        [one] 1 par
       *[other] { $count } pares
    }
report-pairs-read = { $read } de { $asked }
report-highest = lo más alto { $volts }, { $pair }
report-pair = { $device }, { $pair }
report-live-pair = { $pair }: { $volts }
report-pairs-excepted =
    { $count ->
        [one] 1 par omitido por excepción
       *[other] { $count } pares omitidos por excepción
    }
report-pairs-unread =
    { $count ->
        [one] 1 par sin leer: cuenta como con tensión
       *[other] { $count } pares sin leer: cuentan como con tensión
    }
report-proof-spoiled = No prueba nada: un conductor tenía tensión
report-lapse-at = { $why }, { $time }
report-proof-unfinished = No prueba nada: no se mostró que el medidor siguiera funcionando
report-proof-lapsed = La comprobación valió hasta caducar
report-proof-holds = Ausencia de tensión comprobada, medidor probado antes y después
report-proof-part = Los pares leídos no tenían tensión, medidor probado antes y después; el resto no se comprobó
report-exceptions = Excepciones a sabiendas: quedó con tensión
report-col-stays-live = Qué quedó con tensión
report-col-reason = Motivo

## Bays

report-bay-caption =
    { $count ->
        [one] Un punto
       *[other] { $count } puntos
    }
report-keep-out = No tocar
report-retired = retirado
report-landed =
    { $count ->
        [one] un conductor
       *[other] { $count } conductores
    }
report-allowed = { $landed }, se permiten { $allowed }
report-col-point = Punto
report-col-torque = Torque
report-col-found = Como se encontró
report-col-left = Como quedó
report-basis = { $basis }: { $source }
report-no-figure = Sin valor
report-nothing-shown = no se mostró ningún valor
report-found-angle = { $grade }, { $angle }
report-found-opened = Abierto por nosotros
report-held-at = sin giro a { $torque }, { $tool }
report-held-tug = no cedió al jalar
report-moved-below = giró antes de { $torque }, { $tool }
report-moved-at = empezó a girar a { $torque }, { $tool }
report-moved-mark = por su marca de pintura
report-moved-gave = cedió al jalar
report-moved-in-earlier = se había movido en un recorrido anterior
report-looked-tugged = visto y jalado, sin herramienta de torque
report-looked-only = visto, sin mano ni herramienta
report-seen-trouble = Algo se vio
report-damage = daño: { $damage }
report-damage-note = daño: { $damage }; { $note }
report-corrected = nota corregida
report-corrected-why = se había anotado como { $was }: { $why }
report-left-alone = Se dejó como estaba
report-left-set = Ajustado a { $torque }
report-with-tool = con { $tool }
report-left-remade = Rehecho
report-left-out = Fuera de servicio
report-left-unsaid = no se dijo cómo quedó
report-left-as-found = como se encontró
report-left-nothing = no se hizo nada
report-photo = foto { $number }
report-photos = Fotos
report-col-where = Dónde
report-col-finding = Hallazgo
report-col-todo = Cuándo y qué hacer
report-col-decision = Decisión

## Readings

report-readings-caption =
    { $count ->
        [one] Una lectura o prueba, en un lugar que no pide quitar tapas
       *[other] { $count } lecturas y pruebas, en lugares que no piden quitar tapas
    }
report-readings-none = En este recorrido no se devolvió la energía.
report-not-measured = Sin medir
report-limits = { $least } a { $most } V
report-col-reading = Lectura
report-col-value = Valor
report-col-limits = Se espera
report-col-verdict = Veredicto

## Sources

report-sources = Rótulos, documentos y tablas usados
report-no-sources = No se usó ningún valor.
report-col-basis = Base
report-col-source-name = Cuál
report-col-used = Usado en
report-own = Reglas de esta herramienta, dichas nuestras:
report-own-check = Se revisa por debajo del valor, nunca por encima; lo que se mantuvo no se aprieta.
report-own-dead = Los límites de ausencia de tensión, y los 30 minutos tras los que vence una comprobación.
report-own-second-look = La segunda mirada tras un día o { $miles } millas.

## Verify

report-term-digest = Huella del registro
report-term-sequence = Entrada más nueva
report-term-walk = Recorrido
report-term-edition = Hecho con
report-term-printed = Hecho el
report-verify-how = Verifique la bitácora de la que salió esto. La entrada con ese número debe tener la huella impresa aquí.
report-verify-proves = Cada entrada se resume con la anterior (SHA-256 sobre JSON RFC 8785): una entrada cambiada, quitada o puesta desde entonces da otra huella.
report-verify-not = No prueba que una nota sea verdad, quién la hizo ni que el reloj estuviera bien. Quien tenga el archivo puede hacer una cadena nueva; solo una huella guardada en otra parte, como en esta página, lo muestra.
report-verify-photos = Una foto es la nombrada aquí cuando el SHA-256 de su archivo es el impreso a su lado.
report-known-meter = con { $name }, { $category }
report-service = El circuito del suministro, tras la lectura “{ $after }”: { $said }
report-pins = Marcas: { $pins }

## En papel

report-page = página { $page } de { $pages }
report-lacking =
    { $kinds ->
        [one] { $box } está en lugar de una letra que falta en la tipografía de este archivo (al copiar el texto se recupera): { $letters }.
       *[other] { $box } está en lugar de letras que faltan en la tipografía de este archivo (al copiar el texto se recuperan): { $letters }.
    }
report-digest = SHA-256 { $digest }
report-photo-found = como se encontró
report-photo-left = como se dejó
report-labels-title = Etiquetas: { $rig }
report-labels-note = La etiqueta del fabricante en la pieza y el código local van primero. Una etiqueta no prueba que nada esté sin tensión. Recorte por las líneas; no tape rejillas, avisos ni piezas móviles.
report-label-check = Primero compruebe: { $check }
report-label-keep-out = No toque: { $what }
report-label-bay = Quite todas las fuentes y pruebe que no hay tensión antes de abrir.

## Seguimiento

report-follow-up-title = Seguimiento: { $finding }, { $about }
report-follow-up-by = Encontrado el { $day } por { $person }
report-follow-up-label = La etiqueta del fabricante y el código local van antes que todo lo de esta hoja. El trabajo en partes con tensión o cerca de ellas es de una persona cualificada.
report-follow-up-noted = Lo que se anotó
report-follow-up-found = Como se encontró y como se dejó
report-part-asked = Lo que se pide
report-part-place = Dónde, y qué se encontró
report-part-live = La corriente al dejar el recorrido
report-part-answer = Respuesta
report-answer = Para rellenar por quien lo repare; el dueño lo pasa al registro.
report-answer-done = Qué se encontró y se hizo
report-answer-torque = Ajustado a qué par, con qué herramienta
report-answer-readings = Lecturas con la corriente de vuelta
report-answer-parts = Piezas cambiadas
report-answer-name = Nombre
report-answer-licence = Licencia o cualificación
report-answer-day = Fecha
report-labels-none = Este vehículo aún no tiene compartimientos ni puntos, así que no hay etiquetas que imprimir. Añada primero un compartimiento.
report-no-ending = El nombre { $found } no dice qué clase de archivo se pide. Termínelo en .html o en .pdf.
report-no-paper = { $found } no es un papel conocido aquí. Pida a4 o letter.
report-no-photo-size = { $found } no es un tamaño de fotos conocido aquí. Pida stored, mail o none.
report-labels-written =
    { $count ->
        [one] Una etiqueta.
       *[other] { $count } etiquetas.
    }

## De un vistazo

report-part-details = Qué se había movido, y hallazgos
report-glance-moved = { $point }: { $found }; { $left }
report-glance-finding = { $finding }: { $about }
report-glance-more =
    { $count ->
        [one] y uno más, contado abajo
       *[other] y { $count } más, contados abajo
    }
report-glance-tool = { $tool }: { $told }

## Teclas del teléfono

report-key-mail = Informe para enviar, PDF
report-key-mail-note = fotos más pequeñas, el archivo por debajo de 10 MB
report-key-stored = Informe completo, PDF
report-key-stored-note = fotos tal como están guardadas
report-key-page = Informe como página, HTML
report-key-page-note = se abre en cualquier navegador, con las fotos dentro
report-key-labels = Etiquetas, PDF
report-key-labels-note = de compartimientos y puntos, para imprimir y recortar
report-key-sheet = Hoja para una persona con licencia, PDF

## Lo que se pide

report-asked-heading = Qué se pide, y por qué regla
report-asked = Según estaba el registro al hacer este informe
report-col-when = Día
report-col-rule = Regla
report-col-first = Qué llegó primero, y cada límite
report-unwritten = El PDF no se escribió ({ $why }). Es una falla del programa, no de su registro: todo lo anotado está guardado. Escríbalo como .html y diga a los autores lo que está entre paréntesis.
