### Storage, scripts and the check of the ledger.

## What can stand in the way of storing

storage-unreadable = No se puede abrir la bitácora en { $path }. Vea que la carpeta se pueda leer y escribir, e intente otra vez.
storage-newer = La bitácora fue escrita por una versión más nueva: formato { $found }, y aquí el más nuevo es { $known }. Queda intacta; use la versión más nueva.
storage-newer-entry = Una entrada de tipo { $kind }, versión { $found }, no se conoce aquí. La bitácora queda intacta; use una versión más nueva.
storage-damaged = La bitácora está dañada en la entrada { $entry }. Se conserva como está; restaure la copia más nueva, o recupere lo que se pueda leer.
storage-damaged-file = El archivo { $path } no es una bitácora, o está dañado. Se conserva como está; restaure la copia más nueva.
storage-full = No queda espacio, así que este paso no se guarda; todo lo anterior sí. Libere espacio y hágalo otra vez.
storage-busy = Otro proceso tiene la bitácora: { $holder }. Ciérrela allí e intente otra vez.
storage-busy-unknown = Otro proceso tiene la bitácora. Ciérrela allí e intente otra vez.
storage-unexpected = Ocurrió algo que no debía: { $detail }. La bitácora se cerró como estaba; ábrala otra vez.
storage-same-act = Este paso ya está guardado con el mismo nombre, pero dice otra cosa. Nada se cambia; déle otro nombre.





## Added with the screens

storage-holder = proceso { $pid }, desde { $time }
storage-tail-gone = El registro termina en la entrada { $found } y había llegado a { $expected }: faltan las entradas más nuevas. Se conserva como está; restaure la copia más nueva.
storage-damaged-inside = La bitácora está dañada ({ $why }). Se conserva como está; restaure la copia más nueva.
storage-earlier = Esto es anterior a la última entrada: { $found } está antes de { $expected }. Las líneas de un guion van en orden de tiempo, después de todo lo que ya está.
