### Storage, scripts and the check of the ledger.

## What can stand in the way of storing

storage-not-found = No hay bitácora en { $path }. Indique otra carpeta, o empiece una.
storage-exists = Ya hay una bitácora en { $path }. Indique otra carpeta; nada se cambia.
storage-unreadable = No se puede abrir la bitácora en { $path }. Vea que la carpeta se pueda leer y escribir, e intente otra vez.
storage-newer = La bitácora fue escrita por una versión más nueva: formato { $found }, y aquí el más nuevo es { $known }. Queda intacta; use la versión más nueva.
storage-newer-entry = Una entrada de tipo { $kind }, versión { $found }, no se conoce aquí. La bitácora queda intacta; use una versión más nueva.
storage-damaged = La bitácora está dañada en la entrada { $entry }. Se conserva como está; restaure la copia más nueva, o recupere lo que se pueda leer.
storage-damaged-file = El archivo { $path } no es una bitácora, o está dañado. Se conserva como está; restaure la copia más nueva.
storage-full = No queda espacio, así que este paso no se guarda; todo lo anterior sí. Libere espacio y hágalo otra vez.
storage-busy = Otro proceso tiene la bitácora: { $holder }. Ciérrela allí e intente otra vez.
storage-busy-unknown = Otro proceso tiene la bitácora. Ciérrela allí e intente otra vez.
storage-failed = Este paso no se guarda: { $detail }. La bitácora está como antes; intente otra vez.
storage-unexpected = Ocurrió algo que no debía: { $detail }. La bitácora se cerró como estaba; ábrala otra vez.
storage-clock-back = El reloj está antes de la última entrada. El paso se guarda con una marca; corrija el reloj.
storage-same-act = Este paso ya está guardado con el mismo nombre, pero dice otra cosa. Nada se cambia; déle otro nombre.

## Scripts and imports

storage-script-version = El guion tiene versión { $found }; aquí se lee la versión { $known }. Escríbalo de nuevo en la versión { $known }.
storage-script-line = La línea { $line } del guion no se puede leer: { $detail }. Desde esta línea no se guarda nada.
storage-script-refused = La línea { $line } del guion se rechaza. { $reason }
storage-script-time = La línea { $line } del guion es anterior a la última entrada: { $found } está antes de { $expected }. Ponga las líneas en orden de tiempo.

## The check of the whole ledger

storage-verify-good =
    { $count ->
        [one] Una entrada revisada; la cadena está completa. Última huella: { $digest }.
       *[other] { $count } entradas revisadas; la cadena está completa. Última huella: { $digest }.
    }
storage-verify-broken = La cadena se rompe en la entrada { $entry }: se esperaba { $expected } y se halló { $found }. Conserve el archivo; restaure la copia más nueva.
storage-verify-empty = La bitácora está vacía. Cargue un vehículo y revise otra vez.
