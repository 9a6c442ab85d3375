### El pasado: gráficas y lo que dicen, tablas.

## Un punto a través de los años

past-point = { $point } a través de los años
past-point-none = Aquí todavía no se anotó nada.
past-point-told = { $walks ->
        [one] En un recorrido:
       *[other] En { $walks } recorridos:
    } { $held } × firme, { $moved } × movido, flojo o con el cable fuera, { $rest } × visto o sin evaluar.
past-point-more = { $count ->
        [one] Un recorrido anterior no está dibujado; figura en la lista.
       *[other] { $count } recorridos anteriores no están dibujados; figuran en la lista.
    }
past-one-walk = Un solo recorrido no muestra ningún cambio.
past-set = a { $torque }
past-left-alone = sin tocar
past-left-out = sin servicio
past-walk = { $date }: { $told }
past-walk-far = { $walk } (a { $far })

## Tipos que se aflojan

past-kinds = Tipos que se aflojan
past-kinds-scale = Parte que se movió, de 0 a { $most } %; la raya es su intervalo del 90 %
past-k-of-n = { $moved } de { $joints }
past-kind = { $kind }: aún firmes, %
past-kind-n = n = { $joints }, { $moved } movidos. Cajas: lo contado; a trazos: la ley; rayado: su banda del 90 %
past-kind-axis = meses desde que se ajustó o consta apretado
past-kind-steps = { $kind }, contado sin ley: a los { $months } meses se había movido entre { $least } y { $most } %.
past-kind-step = { $kind }, contado sin ley: a los { $months } meses se había movido { $least } %.
past-kinds-law = La ley es la del cobre ajustado por una mano conocida, con todos los tipos juntos; dentro de una caja nadie puede decir cuándo se movió.
past-moved = { $point }: se movió { $times ->
        [one] una vez
       *[other] { $times } veces
    }

## Minutos y tensión

past-minutes = Minutos en cada compartimiento
past-minutes-none = Todavía no se abrió ningún compartimiento en un recorrido.
past-minutes-legend = Barra: último recorrido; raya: lo usual de todos
past-minutes-axis = minutos abierto, sin las pausas
past-minutes-told = En el recorrido del { $date } los compartimientos estuvieron abiertos { $all } minutos en total; el que más tardó, { $bay }, { $most } minutos.
past-volts = Tensión del servicio al devolver la energía
past-volts-none = La tensión del servicio todavía no se midió.
past-volts-limits = entre estas rayas: lo esperado de una línea
past-volts-told = { $reading }: { $walks ->
        [one] medido en un recorrido, { $last } V.
       *[other] de { $least } a { $most } V en { $walks } recorridos, { $last } V en el último.
    }

past-volts-same = { $reading }: { $walks ->
        [one] medido en un recorrido, { $last } V.
       *[other] { $last } V en cada uno de { $walks } recorridos.
    }

## Lo que se pide

past-no-chart = “{ $found }” no es ninguna gráfica. Se espera: point, kinds, minutes o volts.
past-which-point = ¿El pasado de qué punto se dibuja? Nómbrelo por su código, como F8.
past-no-point = La gráfica “{ $chart }” es de todo el vehículo, y se nombró “{ $found }”. Omítalo, o pida la gráfica de un punto.
past-which-export = No se pidió nada. Nombre un archivo de líneas con --to, una carpeta de tablas con --csv, o --schema.

## Tablas

past-table = { $file }: { $rows ->
        [one] una fila
       *[other] { $rows } filas
    }
past-tables-guard = El texto que una hoja de cálculo ejecutaría lleva un apóstrofo delante.
past-cant-write = No se pueden escribir las tablas ({ $why }). Elija otro lugar, o libere espacio.
past-table-there = { $path } ya existe y no se escribe encima. Nombre otra carpeta.
past-photos-apart = { $count ->
        [0] Ninguna entrada nombra una foto.
        [one] Una foto se nombra por su SHA-256 y no está en el archivo: la lleva una copia.
       *[other] { $count } fotos se nombran por su SHA-256 y no están en el archivo: las lleva una copia.
    }
