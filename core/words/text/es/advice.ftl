### The torque card.

## The torque card

advice-check = Ponga la herramienta en { $check }: { $percent } % de { $target }, regla nuestra. Gire a la derecha, despacio; pare al clic o cuando se mueva.
advice-check-full = Ponga la herramienta en { $check }: el valor completo, orden del fabricante. Gire a la derecha, despacio; pare al clic.
advice-question-check = ¿Se movió?
advice-question-tug = ¿Cedió?
advice-question-look = ¿Qué ve?
advice-set = AJUSTE A { $target }, un solo jalón parejo.
advice-basis-label = De la etiqueta de la pieza: { $source }
advice-basis-document = Del documento del fabricante: { $source }
advice-basis-table = Según { $table }: fila { $row }, { $column }. Conocido: { $known }.
advice-basis-calculation = Calculado, T = K·D·F: K { $factor }, D { $diameter } mm, F { $preload } N (75 % de la tensión de prueba). Con K de { $least } a { $most } da de { $low } a { $high }. No es el valor del fabricante.
advice-no-figure = Aquí no hay un valor confiable.
advice-no-torque = No se aprieta a un torque.
advice-missing = Para resolverlo: { $what }.
advice-other = Para comparar, no para ajustar: { $torque }. { $basis }

## The tool

advice-calibration-unknown = Calibración desconocida. Mándela a calibrar, o anote el día de la última.
advice-calibration-holds =
    { $left ->
        [one] La calibración vale hasta el { $date }, o un clic más.
       *[other] La calibración vale hasta el { $date }, o { $left } clics más.
    }
advice-calibration-due = La calibración venció el { $date }. Mándela a calibrar antes de confiar en sus valores.
advice-calibration-due-clicks = La calibración venció por el número de clics. Mándela a calibrar antes de confiar en sus valores.
