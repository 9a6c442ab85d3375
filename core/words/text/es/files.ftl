### Faults of rig files.

## Where a fault of a rig file stands

file-at = { $file }, línea { $line }, columna { $column }, { $field }: { $fault }
file-at-no-field = { $file }, línea { $line }, columna { $column }: { $fault }
file-nothing-stored =
    { $count ->
        [one] Se halló una falla; no se guarda nada. Corríjala y cargue otra vez los archivos.
       *[other] Se hallaron { $count } fallas; no se guarda nada. Corríjalas y cargue otra vez los archivos.
    }

## The faults

file-too-many-bytes = El archivo tiene { $found } bytes o más; se leen como máximo { $most }. Divida el vehículo o quite notas.
file-too-many-records = Hay { $found } registros de este tipo o más; se leen como máximo { $most }. Quite algunos.
file-too-many-points = Hay { $found } puntos o más; se leen como máximo { $most }. Quite algunos.
file-too-many-columns = La tabla tiene { $found } columnas; se leen como máximo { $most }. Quite lo que no es del formato.
file-too-many-faults = Hay más fallas que las { $most } indicadas aquí. Corrija primero estas y cargue otra vez los archivos.
file-not-utf8 = El archivo no es texto UTF-8. Guárdelo como UTF-8 en el editor o la hoja de cálculo.
file-syntax = Esto no es TOML. Se espera una línea como name = "Our rig", o un encabezado como [[bay]]; busque una comilla o un corchete que falte.
file-separator = Las celdas están separadas por “{ $found }”. Se espera una coma: exporte la tabla otra vez con comas.
file-open-quote = Aquí se abre una comilla y nunca se cierra. Ciérrela, o duplíquela dentro del texto.
file-newer = El archivo tiene formato { $found }; aquí se leen formatos hasta { $known }. Use una versión más nueva de este programa.
file-unknown-field = Este nombre no se conoce aquí. Se espera uno de estos: { $expected }.
file-repeated-field = Este nombre está dos veces. Deje uno.
file-missing = Esto falta. Complételo.
file-missing-one-of = Ninguno de estos está completo: { $expected }. Complete uno.
file-too-many-cells = La fila tiene { $found } celdas y el encabezado { $expected }. Un texto con coma necesita comillas.
file-type = Este valor es de tipo { $found }; se espera { $expected }. Revise las comillas.
file-range = “{ $found }” no es un intervalo de calibres. Se espera algo como 14 AWG to 6 AWG.
file-whole = “{ $found }” no va aquí. Se espera un número entero de { $least } a { $most }.
file-yes-no = “{ $found }” no va aquí. Se espera yes o no.
file-date = “{ $found }” no es una fecha. Se espera año, mes y día, como 2027-03-20.
file-taken = El código { $code } ya está en { $file }, línea { $line }. Un código se da una sola vez en un vehículo: elija otro.
file-no-such-source = No hay fuente { $code }. Agréguela al archivo del vehículo, o corrija el código.
file-no-such-bay = No hay compartimiento { $code }. Agréguelo al archivo del vehículo, o corrija el código.
file-no-such-device = No hay dispositivo { $code }. Agréguelo al archivo del vehículo, o corrija el código.
file-no-such-set = El dispositivo no tiene el grupo “{ $found }”. Se espera uno de estos: { $expected }.
file-repeated-set = El dispositivo tiene dos grupos con el nombre “{ $found }”. Dé a cada grupo su propio nombre.
file-needs = Esto no dice nada sin { $other }. Complete también { $other }, o deje esto vacío.
file-clashes = Esto no puede ir junto a { $other }. Deje uno de los dos.
