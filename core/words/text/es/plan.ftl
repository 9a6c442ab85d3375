plan-headline = { $points ->
    [one] 1 punto
   *[other] { $points } puntos
 } en { $bays ->
    [one] 1 compartimento
   *[other] { $bays } compartimentos
 } en { $minutes ->
    [one] 1 minuto
   *[other] { $minutes } minutos
 }
plan-time = Unos { $usual } min en los compartimentos, con lo que se camina; de { $quick } a { $slow } min según el ritmo de la mano.
plan-pace-table = Aún no hay pasos de recorridos propios de este vehículo: el ritmo es uno común.
plan-pace-own = El ritmo se toma de { $count ->
    [one] 1 paso
   *[other] { $count } pasos
 } de los recorridos propios de este vehículo.
plan-glance = Solo ojos y dedos en todo lo que espera: unos { $minutes } min.
plan-over = Lo obligatorio lleva { $minutes } min más de los que hay. Aquí está solo eso: busque los minutos, decida sobre un hallazgo o retire una prioridad.
plan-proved = Demostrado: ningún plan para este tiempo vale más.
plan-gap = El mejor plan hallado; ningún plan vale más de un { $gap } % más. { $why }
plan-nose = De punta a cola hasta agotar el tiempo se habría cubierto el { $share } % de lo que cubre este plan.
plan-beside = Quitar la energía, comprobar su ausencia y devolverla van aparte: de 20 a 30 min más (práctica común, sin fuente). Ningún plan los acorta.
plan-ranking = El orden es una clasificación por lo que se mueve y lo que eso causaría, no una probabilidad de incendio.
plan-alike = Hay { $all } dispositivos iguales ({ $device }, { $fastening }). Si no hay tiempo para todos, a este año le tocan { $seen }: { $devices }. Así cada uno toca dentro de { $years } años. Si en estos nada se movió, algo se movió en { $most } de los demás como máximo, con { $percent } % de confianza. Si algo se movió: revíselos todos.
plan-stop = { $name }, { $side }: { $minutes } min
plan-some-left = { $count ->
    [one] 1 punto queda fuera
   *[other] { $count } puntos quedan fuera
 }
plan-left-out = Queda fuera: { $bay }. { $why }
plan-left-nothing = Allí no espera nada.
plan-left-no-time = Faltan { $minutes } min para su punto más corto junto a lo obligatorio.
plan-left-worth-less = Sus minutos valen más en otra parte: al abrirlo se alcanzaría como mucho el { $share } % del valor de este plan.
plan-rank = Rango { $rank }: se mueve × { $likelihood }, causaría × { $consequence }
plan-must = En todo plan: { $why }
plan-factor = { $factor }: { $found }, × { $times } ({ $basis })
plan-typical = { $current } como es típico de un aparato así, no hay nada anotado
plan-empty = No se puede planear nada de lo que espera.
plan-too-large = Este vehículo no se puede planear: { $why }.
plan-followed = Se sigue el plan: { $headline }. Quedan unos { $left } min de { $minutes }.
plan-left = Se deja el plan; los compartimentos vuelven a ir de punta a cola. Se puede retomar.
plan-anew = Planeado de nuevo: { $headline }; quedan { $left } min de { $minutes }.
plan-key = Seguir un plan
plan-key-note = Lo que más importa en los minutos disponibles
plan-key-minutes = ¿Minutos disponibles para los compartimentos?
plan-key-again = Retomar el plan
plan-key-leave = Dejar el plan
plan-no-minutes = «{ $found }» no es un número de minutos. Se espera de 1 a 360.
plan-no-plan = En este recorrido aún no se siguió ningún plan. Diga los minutos disponibles para hacer uno.
