### Fotos: por qué una no se guarda, qué se conserva, qué falta.

## Por qué no se guarda un archivo

photo-empty = El archivo está vacío: la cámara no escribió nada. Tome la foto otra vez.
photo-none = El archivo no es una foto: ni JPEG ni PNG por sus primeros bytes, diga lo que diga su nombre. Elija un archivo JPEG o PNG.
photo-foreign = El archivo es { $found }; se guardan JPEG y PNG. Ponga la cámara en JPEG, o guarde antes la imagen como JPEG.
photo-too-large = El archivo tiene más de { $most } MB. Elija un tamaño menor en la cámara.
photo-too-many-pixels = La foto tiene { $width } × { $height } píxeles; las fotos de esta forma se guardan hasta { $most } millones. Elija un tamaño menor en la cámara.
photo-too-many-scans = La foto tiene { $pixels } píxeles en más de { $most } pasadas, y leerla tardaría demasiado. Guárdela de nuevo como JPEG sencillo, no progresivo.
photo-cut-off = La foto está cortada: el archivo termina antes que la imagen. Cópiela otra vez, o tómela otra vez.
photo-damaged = La foto está dañada ({ $why }). Cópiela otra vez, o tómela otra vez.
photo-unsupported = La foto es de una forma que las cámaras no escriben ({ $why }). Guárdela antes como JPEG sencillo.
photo-cant-read = No se puede leer la foto { $path } ({ $why }). Revise su nombre y su lugar.
photo-no-place = No hay compartimiento, punto ni fuente { $found } en el vehículo. Nombre uno por su código, o el vehículo por su nombre.

## Fotos que se esperan de una cámara

photo-expected = Se espera: { $path }. Se anota al seguir el recorrido, o con: photo arrived.
photo-none-expected = No se espera ninguna foto.
photo-entered = Anotada: la foto de { $about } desde { $path }. El archivo mismo todavía dice lo que la cámara escribió a su lado.
photo-nothing = La cámara no escribió nada en { $path }; no se anota ninguna foto de { $about }.
photo-not-entered = La foto de { $about } en { $path } no está anotada y se sigue esperando. { $why }
photo-expected-no-longer = Ya no se espera: { $path }. El archivo queda donde está.

## Las fotos frente al registro

photo-all-there =
    { $count ->
        [0] Ninguna entrada nombra una foto.
        [one] La única foto que nombra una entrada está como estaba.
       *[other] Las { $count } fotos que nombran las entradas están como estaban.
    }
photo-some-missing =
    { $missing ->
        [one] Una de { $count } fotos que nombran las entradas no está como estaba.
       *[other] { $missing } de { $count } fotos que nombran las entradas no están como estaban.
    }
photo-gone = Entrada { $seq }, { $about }: falta el archivo de la foto ({ $digest }). Tráigalo de una copia.
photo-changed = Entrada { $seq }, { $about }: el archivo de la foto no es el que se anotó ({ $digest }). Tráigalo de una copia.
photo-unreadable = Entrada { $seq }, { $about }: no se puede leer el archivo de la foto ({ $digest }). Vea que su carpeta se pueda leer.
photo-original-changed = Entrada { $seq }, { $about }: la foto está, y la imagen como llegó no es la que se conservó ({ $digest }).
photo-stray = { $path } ({ $size } kB): ninguna entrada lo nombra.
photo-unfinished = { $path } ({ $size } kB): no se escribió hasta el final.
photo-not-ours = { $path } ({ $size } kB): no es un archivo nuestro, así que se deja.
photo-strays =
    { $count ->
        [one] Ninguna entrada nombra un archivo. Queda hasta que lo quite con: photo clear. Si se perdieron las entradas más nuevas, puede ser una foto de ellas; restaure antes una copia.
       *[other] Ninguna entrada nombra { $count } archivos. Quedan hasta que los quite con: photo clear. Si se perdieron las entradas más nuevas, pueden ser fotos de ellas; restaure antes una copia.
    }
photo-cleared =
    { $count ->
        [0] Nada que quitar: una entrada nombra cada archivo.
        [one] Se quitó un archivo que ninguna entrada nombraba, { $size } kB.
       *[other] Se quitaron { $count } archivos que ninguna entrada nombraba, { $size } kB.
    }
photo-thumbnails =
    { $count ->
        [one] Una miniatura está hecha de nuevo.
       *[other] { $count } miniaturas están hechas de nuevo.
    }
photo-no-thumbnail = No se pudo hacer una miniatura de { $digest }. Revise las fotos.
photo-originals-kept = Las imágenes se conservan como llegaron, junto a una versión menor: todos los píxeles, con la hora y el lado de arriba, y nada más de lo que escribió la cámara. Ocupan diez veces más.
photo-originals-not-kept = Las imágenes se conservan con un lado mayor de 1600 píxeles; la imagen como llegó no se conserva.

## La foto que muestra un compartimiento, y sus marcas

photo-of-bay =
    { $count ->
        [0] Foto de { $bay }, todavía sin marcas.
        [one] Foto de { $bay }, con una marca en { $pins }.
       *[other] Foto de { $bay }, con marcas en { $pins }.
    }
photo-show-newer = Mostrar la foto más nueva; sus marcas se ponen de nuevo
photo-pin-beside = Una marca en { $across }, { $down } quedaría fuera de la foto. Se esperan milésimas de su ancho y alto, de 0 a 1000 cada una.
photo-none-of-bay = No hay foto de { $bay } donde poner marcas. Tome una antes, en un recorrido.
