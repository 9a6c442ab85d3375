### Cuándo volver a mirar: reglas, lo que toca, lo aplazado.

## Reglas

timing-about-kind = Todos los terminales de este tipo: { $kind }
timing-months =
    { $months ->
        [one] cada mes
       *[other] cada { $months } meses
    }
timing-every = cada { $figure }
timing-season = cada año el { $day } de { $month } ({ $anchor })
timing-after =
    { $days ->
        [0] enseguida después de { $event }
        [one] un día después de { $event }
       *[other] { $days } días después de { $event }
    }
timing-after-far = { $after } de al menos { $distance }
timing-chance = cuando la probabilidad de que un terminal crítico se haya movido pasa de { $percent } %
timing-rule = { $about }: { $limits }; lo que llegue primero.
timing-rule-one = { $about }: { $limits }.
timing-with-word = { $rule } La palabra del dueño: { $word }
timing-yearly = el vehículo entero

## Lo que toca

timing-due = { $about }: toca el { $date }; { $reason }.
timing-due-at = { $about }: toca el { $date } o a { $at }; { $reason }.
timing-due-never = { $about }: toca ahora; { $reason }.
timing-put-off = Aplazado del { $date } al { $until }: { $why }
timing-bound = { $limit }: { $date }
timing-bound-range = { $limit }: hacia el { $date }, entre el { $from } y el { $to } en nueve de diez casos
timing-bound-open = { $limit }: hacia el { $date }, no antes del { $from } en nueve de diez casos, y quizá mucho después
timing-bound-at = { $bound }, a { $at }
timing-bound-unknown = { $limit }: todavía no se puede decir un día. Hacen falta dos anotaciones con semanas entre ellas.

## Lo que se escribió y no se puede usar

timing-no-rules = No hay más regla que la anual.
timing-no-rule = No hay regla con el número { $number }. La lista muestra los números.
timing-no-due = Nada de lo que toca tiene el número { $number }. La lista muestra los números.
timing-no-field = «{ $found }» no es parte de una regla. Se espera una de: { $expected }.
timing-no-about = «{ $found }» no nombra compartimento, punto ni tipo de fijación de este vehículo. Omítalo para el vehículo entero.
timing-no-year-day = «{ $found }» no es un día del año. Se esperan mes y día, como 04-15.
timing-no-whole = «{ $found }» no es un número entero que valga aquí. Se esperan solo cifras.
timing-no-event = Se da una distancia de mal camino sin los días después. Indique también rough_road.

## Lo que dice el pasado del vehículo

timing-kind = { $kind }: { $moved } de { $joints } vidas acabaron en movimiento, una parte de { $share } % (entre { $least } y { $most } % en nueve de diez casos).
timing-kind-law = { $kind } La probabilidad de que uno se haya movido un año después de ajustado: { $share } % (entre { $least } y { $most } %).
timing-kind-few = { $kind } Se movieron menos de cinco: la parte es todo lo que se puede decir.
timing-never-tight = { $count ->
        [one] Un terminal se había movido sin que conste que estuviera apretado. No dice nada de cuánto aguanta una unión y queda fuera.
       *[other] { $count } terminales se habían movido sin que conste que estuvieran apretados. No dicen nada de cuánto aguanta una unión y quedan fuera.
    }
timing-learned-none = Todavía no consta la vida de ningún terminal. Empieza cuando se ajusta, o cuando se halla firme a su par de comprobación.
timing-learned-first = El primer terminal crítico que probablemente se haya movido: { $point }, para el { $date }.
timing-learned-how = Un día que sale de esto solo llega antes que la regla fija. Un intervalo más largo necesita la palabra del dueño, en una regla.
timing-condition = Condición { $number } de 3: { $condition }. Una analogía con NFPA 70B (9.3.1), que es para la industria y no le obliga; no mueve ningún día.

## El archivo de calendario

timing-calendar = Terminales de { $rig }
timing-event = { $rig }: revisar los terminales
timing-event-note = { $items } Primero quite la energía y compruebe que no está. La etiqueta del fabricante y el código local van antes que toda cifra; las partes vivas son para una persona cualificada.
timing-event-gone = Hecho o retirado desde entonces: ya no se pide.
timing-calendar-hint = Los teléfonos duermen una aplicación que no se usa en meses y pierden sus avisos. Ponga las fechas también en su propio calendario, con el archivo de calendario del vehículo.

## Las teclas de cuándo sigue

timing-key-odometer = Anotar el odómetro
timing-key-hours = Anotar el horómetro
timing-key-trip = Anotar un viaje
timing-key-event = Pasó algo
timing-key-rule = Una regla propia
timing-key-put-off = Aplazar
timing-key-drop = Quitar esta regla
timing-ask-odometer = ¿Qué marca el odómetro, con su unidad, como 41234 mi?
timing-ask-hours = ¿Qué marca el horómetro, como 812 h?
timing-ask-trip = ¿Qué distancia fue, con su unidad, como 320 mi?
timing-ask-event = ¿Qué pasó?
timing-ask-note = ¿Qué fue, en sus palabras?
timing-ask-limit = ¿En qué se cuenta?
timing-limit-months = Meses
timing-limit-distance = Distancia
timing-limit-hours = Horas de motor
timing-ask-figure = ¿Cuánto, como 6 para meses, 3000 mi o 100 h?
timing-ask-until = ¿Hasta cuándo?
