### What was typed and can't be taken.

## What a person typed and can't be taken

fault-unknown-code = “{ $found }” no se conoce aquí. Se espera uno de estos: { $expected }.
fault-number = “{ $found }” no es un número. Se esperan cifras con un signo decimal como máximo y sin separador de miles, como 45 o 0.5.
fault-range = { $found } { $unit } está fuera de lo que puede ser { $quantity } aquí: de { $least } a { $most } { $unit }. Léalo otra vez, y su unidad.
fault-quantity-torque = un torque
fault-quantity-voltage = una tensión
fault-quantity-current = una corriente
fault-quantity-distance = una distancia
fault-quantity-length = una longitud
fault-quantity-check-percent = la parte para la revisión
fault-quantity-hours = las horas de un motor
fault-quantity-other = este valor
fault-length = “{ $found }” no es una longitud. Se espera un número o fracción, un espacio y una unidad, como 3/16 in o 5 mm.
fault-thread = “{ $found }” no nombra una rosca. Se espera un nombre comercial como #10-32, 1/4-20, M6 o M8x1.25.
fault-wire-size = “{ $found }” no es un calibre. Se espera un calibre y su unidad, como 6 AWG, 2/0 AWG, 250 kcmil o 2.5 mm2.
fault-code = “{ $found }” no es un código. Se esperan de una a ocho letras y cifras, como F8.
fault-terminal-torque-on-clamp = Esto no se aprieta a un torque: { $kind }. Deje vacío el torque, o corrija la sujeción.
fault-terminal-none-allowed = Según la nota, la terminal no admite ningún conductor. Se espera al menos uno; lea otra vez su marca.
fault-terminal-half-set = Se nombra un conductor sin su grupo, o un grupo sin su conductor. Anote los dos, o ninguno.
fault-at-record = { $code }: { $fault }
fault-code-taken = El código { $code } está tomado: un código se da una sola vez en un vehículo, aunque su registro se haya retirado. Elija otro.
fault-missing-record = { $code } nombra un registro ({ $what }) que no está en el libro. Agréguelo primero, o nombre otro.
fault-no-such-set = { $code } nombra un grupo o conductor que su dispositivo no tiene. Elija uno del propio dispositivo.
fault-empty-name = Un nombre está vacío. Escriba cómo se llama.
fault-months = Una regla de { $months } meses no puede ser. Se espera de 1 a 12: un año es la costumbre, y solo menos es más estricto.

## Why no torque is calculated for a bolt

fault-bolt-pitch = La rosca { $thread } no dice su paso. Se espera algo como 1/4-20 o M8x1.25.
fault-bolt-grade = No se calcula torque para este material: { $grade }. Se espera un grado de acero; pregunte al fabricante de la pieza.
fault-bolt-diameter = La tensión de prueba de { $grade } se conoce solo hasta { $most } mm. Pregunte al fabricante de la pieza.
fault-bolt-finish = No se conoce el factor de tuerca de este acabado: { $finish }. Pregunte al fabricante de la pieza.

## Why a tool is not set to a torque

fault-setting-outside = Esta herramienta no llega a { $wanted }: va de { $least } a { $most }. Use una cuyo alcance lo incluya.
fault-setting-coarse = La escala de esta herramienta es muy gruesa para { $wanted }: su división es { $step }. Use una de escala más fina.
fault-setting-tool = El alcance y la división de esta herramienta no concuerdan: de { $least } a { $most }, división { $step }. Anote los tres en su propia unidad, el menor primero.
fault-adapter-lever = El adaptador deja { $left } mm de una palanca de { $lever } mm. Se espera más de la mitad; gire el adaptador, o use una llave más larga.
fault-quantity-angle = un ángulo
fault-quantity-temperature = una temperatura
fault-terminal-range-reversed = El rango de calibres empieza por encima de donde termina. Escriba primero el conductor más delgado, como 14 AWG to 6 AWG.
fault-tool-scale = { $code }: el rango y el paso de una herramienta van en una sola unidad, y el rango empieza por lo menor. Escriba los tres en la unidad propia de la herramienta.
fault-not-wired = { $code } está conectado a { $to }, que no está en el libro. Agréguelo antes, o nombre otro.
fault-feed = “{ $found }” no nombra ningún grupo de un dispositivo. Se espera una fuente como S1, o un grupo como FTS/shore in.
fault-pin = Una marca en la foto de { $code } nombra un punto de otro compartimiento, o lo nombra dos veces. Se espera una marca por punto de { $code }.
fault-no-photo = La foto de { $code } no tiene nombre. Se espera una foto ya guardada.
