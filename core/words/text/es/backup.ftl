### Guardar la bitácora: copia, restauración, recuperación, líneas.

## Hacer una copia

backup-made = Copia escrita y releída: { $path }. { $entries ->
        [one] Una entrada
       *[other] { $entries } entradas
    }, { $photos ->
        [one] una foto
       *[other] { $photos } fotos
    }. Guárdela fuera de este aparato.
backup-photos-missing = { $count ->
        [one] Una foto que nombra una entrada falta o está dañada, y no está en ella.
       *[other] { $count } fotos que nombran entradas faltan o están dañadas, y no están en ella.
    }
backup-with-passphrase = Sin su frase de paso nadie puede abrirla, y nadie puede recuperar la frase: guárdela aparte del archivo.
backup-without-passphrase = No tiene frase de paso: quien tenga el archivo puede leerlo todo.
backup-never = Todavía no hay copia: { $entries ->
        [one] una entrada
       *[other] { $entries } entradas
    } y { $walks ->
        [one] un recorrido
       *[other] { $walks } recorridos
    } están solo en este aparato. Haga una copia y guárdela fuera de este aparato.
backup-since = Desde la copia del { $date }: { $entries ->
        [one] una entrada
       *[other] { $entries } entradas
    } y { $walks ->
        [one] un recorrido
       *[other] { $walks } recorridos
    } están solo en este aparato. Haga una copia nueva y guárdela fuera de este aparato.
backup-low-room = Poco espacio: hay { $free } MB libres y se quieren { $low } MB para un recorrido con fotos (regla nuestra). Haga espacio primero; lo que no cabe se rechaza, nunca se guarda a medias.
backup-ask-passphrase = Frase de paso:
backup-ask-again = Otra vez:
backup-not-the-same = Las dos frases de paso no son iguales. No se escribió nada; empiece de nuevo.
backup-empty-passphrase = La frase de paso está vacía. Escriba una, o quite la opción.

## Lo que puede impedirlo

backup-stopped = Detenido. Todo está como estaba.
backup-exists = { $path } ya existe y no se escribe encima. Elija otro nombre.
backup-no-room = No hay espacio para la copia. No queda nada de ella; haga espacio o elija otro lugar.
backup-cant-write = No se puede escribir { $path } ({ $why }). No queda nada; elija otro lugar.
backup-read-back = La copia no se releyó como se escribió, y se quitó de nuevo: { $why } Pruebe otro lugar.
backup-unread = No se puede leer ({ $why }). Vea su nombre y su lugar.
backup-no-archive = Esto no es una copia, o está cortada. No se tocó nada; use otra copia.
backup-needs-passphrase = Esta copia tiene frase de paso. Dé la opción para ella y escríbala.
backup-wrong-passphrase = La frase de paso no abre esta copia, o sus primeros bytes están dañados. No se tocó nada; escríbala otra vez.
backup-too-much-work = Abrir este archivo pide más memoria de la que tiene un teléfono; no se hizo aquí. No se tocó nada.
backup-too-new = Esta copia es de una versión más nueva: { $found }, y aquí la más nueva es { $known }. No se tocó nada; use la versión más nueva.
backup-changed = Esta copia no está como se escribió: algo se cambió, se añadió o se cortó. No se tocó nada; use otra copia.
backup-member = Esta copia no se puede usar: { $name }: { $why }. No se tocó nada; use otra copia.
backup-member-name = ninguna copia tiene una parte con este nombre
backup-member-twice = está dos veces
backup-member-no-file = es un enlace o una carpeta, y una copia tiene solo archivos
backup-member-packed = está comprimida o cerrada por sí misma, y nada en una copia lo está
backup-member-too-large = es más grande de lo que puede ser
backup-member-place = está encima de otra o fuera del archivo
backup-member-bytes = sus bytes no son los que debería tener
backup-member-missing = falta
backup-member-not-named = ninguna entrada la nombra
backup-line = La línea { $line } no encaja: { $why }. No se tomó nada; use otra copia del archivo.
backup-line-digest = su huella es { $found }, y la de sus bytes tras la línea anterior es { $expected }: algo en ella se cambió, o falta una línea anterior
backup-line-number = dice ser la entrada { $found }, y se esperaba la { $expected }
backup-line-entry = no es una entrada como se escriben ({ $why })
backup-line-end = falta el final, nombra otra entrada, o hay algo detrás
backup-line-form = no es una entrada en la forma en que se escriben

## Restaurar

restore-holds = La copia se hizo el { $made } y tiene { $entries ->
        [one] una entrada
       *[other] { $entries } entradas
    }, { $rigs ->
        [one] un vehículo
       *[other] { $rigs } vehículos
    }, { $walks ->
        [one] un recorrido
       *[other] { $walks } recorridos
    }.
restore-present = Aquí ya hay una bitácora: { $rigs ->
        [one] un vehículo
       *[other] { $rigs } vehículos
    }, { $walks ->
        [one] un recorrido
       *[other] { $walks } recorridos
    }, la entrada más nueva del { $newest }.
restore-same = La copia lo tiene todo.
restore-newer = La copia lo tiene todo y { $more ->
        [one] una entrada
       *[other] { $more } entradas
    } más.
restore-older = La copia es más vieja: { $lost ->
        [one] una entrada de aquí no está
       *[other] { $lost } entradas de aquí no están
    } en ella.
restore-apart = Las dos se separaron: { $lost ->
        [one] una entrada de aquí no está
       *[other] { $lost } entradas de aquí no están
    } en la copia. Dos bitácoras no se pueden unir.
restore-other = La copia es de otra bitácora: { $lost ->
        [one] una entrada de aquí no está
       *[other] { $lost } entradas de aquí no están
    } en ella. Dos bitácoras no se pueden unir.
restore-unreadable = Aquí ya hay una bitácora que no se puede leer.
restore-say-replace = No se tocó nada. Para reemplazarla, dígalo con --replace; lo que hay aquí se guarda con otro nombre.
restore-no-room = No hay bastante espacio: se necesitan { $needed } MB y hay { $free } MB libres. No se tocó nada; haga espacio primero.
restore-done = Restaurada. Se comprobaron todas las entradas, fotos y tablas.
restore-kept = Lo que había aquí se guarda en { $path }.
restore-new-proof = Hay un recorrido abierto en ella: lo hecho desde la copia no se sabe. Trate todo como vivo hasta probarlo sin tensión de nuevo.

## Recuperación

recover-told = { $whole ->
        [one] Una entrada está
       *[other] { $whole } entradas están
    } enteras y quedan como estaban; { $anew ->
        [one] una entrada posterior se leyó y se selló
       *[other] { $anew } entradas posteriores se leyeron y se sellaron
    } de nuevo. La bitácora dañada había llegado a la entrada { $reached }.
recover-gap = Faltan: entradas { $from } a { $to }, por sus números viejos.
recover-no-gap = No falta ninguna entrada.
recover-photos-missing = { $count ->
        [one] Una foto falta o está dañada.
       *[other] { $count } fotos faltan o están dañadas.
    }
recover-kept = La bitácora dañada se guarda en { $path }.
recover-new-proof = Donde haya un recorrido abierto, trate todo como vivo hasta probarlo sin tensión de nuevo. Haga una copia ahora.
recover-whole = Nada está dañado, así que no se hizo nada.
recover-none = No hay bitácora en esta carpeta. Vea su nombre y su lugar.
recover-nothing = No se puede leer ni una entrada. El archivo se conserva como está; restaure la copia más nueva.

## De dónde viene la bitácora

verify-from-backup = Entrada { $entry }: restaurada el { $date } de una copia cuya última entrada es { $backup }, huella { $digest }.
verify-replaced = Reemplazó una bitácora cuya última entrada era { $entry }, huella { $digest }.
verify-recovered = Entrada { $entry }: recuperada el { $date } de una bitácora dañada.

## Líneas

backup-exported = { $entries } entradas escritas. Huella más nueva { $digest }.
backup-imported = { $entries } entradas tomadas, byte por byte. Huella más nueva { $digest }.
backup-import-into-empty = Esta bitácora tiene entradas, y dos bitácoras no se pueden unir. Importe en una vacía: nombre otra carpeta con --store.
