### What a walk says of terminals, sources, readings, findings and the next walk.

## Names of things: code and name

walk-named = { $code }, { $name }
walk-this-source = esta fuente
walk-this-bay = este compartimiento
walk-this-device = este dispositivo
walk-this-point = este punto
walk-this-tool = esta herramienta
walk-about-rig = el vehículo

## What a terminal still needs before it may be touched

walk-needs-open = { $bay } no está abierto. Ábralo y compruebe la ausencia de tensión.
walk-needs-source = { $source } aún no está cortada, así que aquí nada se puede comprobar. Córtela primero y compruebe otra vez cada par.
walk-needs-sets = { $device } no tiene grupos de conductores anotados, así que nada se puede comprobar. Anótelos primero.
walk-needs-pairs =
    { $left ->
        [one] { $device }: un par sin comprobar. Léalo: { $pair }.
       *[other] { $device }: { $left } pares sin comprobar. Lea el siguiente: { $pair }.
    }
walk-needs-live-again = Falta mostrar que el medidor sigue funcionando. Lea otra vez la fuente conocida de { $supply }.
walk-needs-found-live = Un conductor en { $device } tiene tensión. Aléjese, halle qué lo alimenta y córtelo; luego compruebe otra vez cada par.
walk-needs-lapsed = La prueba ya no vale: { $lapse }. Compruebe otra vez la ausencia de tensión.
walk-pair = { $from } a { $to }, { $set }, { $supply }
walk-pair-between = { $from } de { $set } a { $to } de { $other }, { $supply }

## As found

walk-found-held-torque = Firme: no giró a { $at } con { $tool }
walk-found-held-tug = Firme: no cedió al jalón
walk-found-turned = Se movió: giró { $angle } por debajo de { $below } con { $tool }
walk-found-began = Se movió: empezó a girar a { $at } con { $tool }
walk-found-mark-off = Se movió: marca de pintura corrida { $angle }
walk-found-gave = Se movió: cedió al jalón
walk-found-loose = Flojo: se movió con la mano
walk-found-apart = Cable fuera: conductor suelto
walk-found-opened = Sin evaluar: abierto por nosotros, hay que ajustarlo
walk-found-looked = Visto, sin herramienta
walk-found-looked-tugged = Visto y jalado, sin herramienta de torque
walk-found-not-judged = Sin evaluar: { $why }
walk-found-not-judged-note = Sin evaluar: { $why }; { $note }

## As left

walk-left-alone = Quedó como estaba: { $why }
walk-left-set = Ajustado a { $torque } con { $tool }
walk-left-remade = Rehecho
walk-left-remade-set = Rehecho, ajustado a { $torque } con { $tool }
walk-left-out-of-service = Circuito fuera de servicio: { $how }
walk-seen-clear = Sin novedad
walk-seen-trouble = Se vio: { $what }

## Sources

walk-away-isolated = cortada
walk-away-isolated-note = cortada: { $note }
walk-away-not-found = buscada, no encontrada: cuenta como conectada
walk-away-not-found-note = buscada, no encontrada: cuenta como conectada; { $note }
walk-away-stays = sigue con tensión: { $note }

## Readings

walk-measured-works = funciona
walk-measured-fails = no funciona
walk-measured-not = sin medir: { $why }
walk-verdict = { $act } { $verdict }: { $expected } ({ $basis }).
walk-verdict-test = { $act } { $verdict }.
walk-expected = se espera { $range }

## Findings and what is decided

walk-finding = { $what }: { $finding }. { $do }
walk-follow-up-by = { $decision }, hasta el { $date }
walk-with-note = { $text }; { $note }

## When next

walk-due = Próximo recorrido: { $date }; { $reason }.
walk-due-odometer = Próximo recorrido: { $date } o a { $at }; { $reason }.
walk-due-never = Toca ahora: { $reason }.
walk-second-look = Segunda revisión de lo ajustado o rehecho: { $date }, o después de 80 a 160 km.
walk-seen-not-looked = Nadie miró: { $why }
walk-service-faults = Lo explica: { $faults }.
walk-service-hidden = Aún no descartado: { $faults }.
walk-service-fault-at = { $fault } ({ $at })
walk-service-ask-pair = { $ask } Siguiente: { $pair }.
