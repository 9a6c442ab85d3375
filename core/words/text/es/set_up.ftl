### Dar de alta un vehículo donde uno está, y completarlo después.

## Lo que se puede añadir

set-up-bay = Compartimiento nuevo
set-up-device-new = Aparato nuevo
set-up-terminal = Terminal nuevo
set-up-look-new = Revisión nueva

## Lo que se pregunta

set-up-name = ¿Cómo se llama? Déjelo vacío para tomar el nombre de su clase.
set-up-bay-name = ¿Cómo se llama el compartimiento?
set-up-side = ¿Desde dónde se llega?
set-up-along = ¿En qué parte del vehículo está?
set-up-nose = En la punta
set-up-front-half = Mitad delantera
set-up-middle = En el medio
set-up-rear-half = Mitad trasera
set-up-tail = En la cola
set-up-device = ¿Qué clase de aparato es?
set-up-system = ¿Qué conductores tiene?
set-up-sets = ¿Cuántos grupos de estos conductores llegan y salen?
set-up-set-count =
    { $count ->
        [one] Uno
       *[other] { $count }
    }
set-up-on-device = ¿En qué aparato?
set-up-fastening = ¿Qué lo sujeta?
set-up-look = ¿Qué se mira?
set-up-place = ¿Dónde está?
set-up-note = Una nota
set-up-presence = ¿Está ahí?
set-up-how = ¿Cómo se retira?
set-up-keep-out = ¿Qué debe quedar sin tocar aquí?
set-up-torque = Par de la etiqueta o del documento del fabricante, con su unidad, como 45 lbf.in
set-up-torque-basis = ¿Dónde se leyó el par?
set-up-torque-source = Qué etiqueta o documento, en sus palabras
set-up-set = ¿A qué grupo de conductores del aparato pertenece?
set-up-conductor = ¿Qué conductor es?
set-up-wire = Su calibre, como 6 AWG
set-up-current = La corriente de su circuito, como 30 A

## Lo que se dice

set-up-all-sets = Cuente cada cable que llega. Cada grupo se comprueba sin tensión antes de meter las manos; el que no se cuenta no se comprueba.
set-up-sources = Todo lo que puede dar tensión a un conductor. Aquello de lo que no está seguro cuenta como presente hasta que se encuentre o se compruebe retirado.
set-up-added = { $code } está en el libro: { $name }. Lo demás se puede completar después.
set-up-not-noted = sin anotar
set-up-device-first = El compartimiento aún no tiene ningún aparato. Añada primero el aparato: en él se comprueba que no hay tensión.
set-up-answers = Se dieron { $found } respuestas; se esperan { $expected }, una por pregunta y en orden.
set-up-not-offered = «{ $found }» no es ninguna de las respuestas ofrecidas. Elija una de ellas.
set-up-no-piece = «{ $found }» no se puede añadir. Se espera: bay, device, terminal o look.
set-up-first-walk = Primer recorrido: { $bays }. Mirar, tirar, fotografiar las etiquetas; las cifras pueden esperar.
set-up-have = La hay
set-up-have-not = No la hay
set-up-not-sure = No es seguro
set-up-and-dc = { $system }, y además CC
