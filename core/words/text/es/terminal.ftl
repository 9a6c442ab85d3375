### Words of the command.

## Help of the command

terminal-about = El recorrido anual de las terminaciones eléctricas de una casa rodante o remolque, sin red.
terminal-command-try = Recorre el vehículo de muestra con un guion grabado y escribe su informe
terminal-command-rig = Muestra, carga o escribe un vehículo
terminal-command-walk = Recorre un vehículo, pregunta por pregunta; sigue donde se detuvo
terminal-command-torque = Consejo de torque para una terminal del vehículo
terminal-command-due = Cuándo toca el próximo recorrido, y por qué
terminal-command-findings = Hallazgos abiertos y lo decidido
terminal-command-report = Escribe el informe de un recorrido
terminal-command-verify = Revisa todo el registro
terminal-command-calc = Un cálculo: entra JSON, sale JSON

## Commands, values and options, added with the shell

terminal-command-note = Anota el odómetro
terminal-exit-codes = Códigos de salida: 0 hecho, 1 inesperado, 2 lo escrito o leído no sirve, 3 las reglas lo rechazan, 4 no existe, 5 sin espacio, 6 otro proceso tiene la bitácora, 7 versión más nueva, 8 dañado.
terminal-torque-fields = Un punto de un vehículo por su código (F8), o una terminal por las columnas de points.csv: role=power fastening=pressure_screw drives=slotted "wire=6 AWG". docs/rig-files.md las enumera.
terminal-rig-layouts = Enumera los modelos para empezar
terminal-rig-start = Empieza un vehículo propio desde un modelo
terminal-rig-load = Carga un vehículo desde sus dos archivos
terminal-rig-amend = Pone un vehículo como dicen sus dos archivos; los registros que ya no están se retiran
terminal-rig-write = Escribe un vehículo en sus dos archivos
terminal-rig-add = Agrega una fuente, compartimiento, dispositivo, punto o herramienta, también en un recorrido
terminal-rig-change = Cambia lo anotado de un registro
terminal-rig-retire = Retira un registro; su pasado queda
terminal-findings-decide = Decide sobre un hallazgo
terminal-argument-layout = Un modelo de la lista
terminal-argument-name = Cómo llama usted al vehículo
terminal-argument-toml = El archivo del vehículo
terminal-argument-csv = El archivo de sus puntos
terminal-argument-folder = La carpeta donde escribir
terminal-argument-record = Qué agregar
terminal-argument-code = El código del registro, como F8
terminal-argument-fields = Campos como nombre=valor
terminal-argument-odometer = La lectura y su unidad, como "41230 mi"
terminal-argument-out = El archivo que se escribe
terminal-argument-number = El número del hallazgo en la lista
terminal-argument-decision = mended, licensed, ourselves, next_walk o accepted
terminal-argument-calc = El nombre de un cálculo; sin nombre se enumeran
terminal-option-store = La carpeta de la bitácora
terminal-option-language = El idioma: en o es
terminal-option-json = Muestra en JSON
terminal-option-folder = La carpeta para su bitácora e informe
terminal-option-person = Quién recorre
terminal-option-bays = Solo algunos compartimientos, por sus códigos
terminal-option-second-look = Solo lo que el último recorrido ajustó o rehizo
terminal-option-script = Repite un guion de pasos, un objeto JSON por línea
terminal-option-walk = Un recorrido por su identificador; si falta, el último
terminal-option-by = El día hasta el que debe estar hecho
terminal-option-note = Una nota
terminal-option-rig = El vehículo por su nombre
terminal-option-schema = Muestra los esquemas JSON de lo que entra y sale
terminal-cant-read = No se puede leer { $path } ({ $why }). Revise su nombre y lugar.
terminal-cant-write = No se puede escribir { $path } ({ $why }). Elija otro lugar, o libere espacio.
terminal-written = Escrito: { $path }
terminal-kept = Todo lo anotado se conserva. El mismo comando sigue en esta tarjeta.
report-no-walk-id = “{ $found }” no nombra un recorrido. Omítalo para tomar el último.
terminal-command-check-share = Mostrar o fijar la parte del valor a la que se revisan los terminales, y por qué
terminal-argument-percent = Porcentaje, de 80 a 90; sin él, se muestra
terminal-command-backup = Escribir toda la bitácora en un archivo, y releerlo
terminal-command-restore = Recobrar la bitácora de una copia; todo se comprueba primero
terminal-command-recover = Pasar lo que se pueda leer de una bitácora dañada a una nueva; la dañada se conserva
terminal-command-export = Escribir todas las entradas como líneas JSON
terminal-command-import = Tomar entradas exportadas en una bitácora vacía
terminal-argument-backup = El archivo por escribir; uno que ya existe no se escribe encima
terminal-argument-restore = La copia
terminal-argument-export = El archivo por escribir
terminal-argument-import = El archivo de entradas exportadas
terminal-option-passphrase = Con frase de paso, escrita sin mostrarse o dada como primera línea de la entrada estándar
terminal-option-look = Solo comprobarla y decir qué haría una restauración
terminal-option-replace = Reemplazar la bitácora que hay aquí; se guarda con otro nombre
terminal-option-backup = Una copia con que completar
terminal-command-photo = Guardar fotos, y ver si las guardadas coinciden con el registro
terminal-photo-add = Guardar una foto de un archivo, en el recorrido abierto
terminal-photo-expect = Anotar una foto antes de que una cámara la escriba en un archivo
terminal-photo-arrived = Anotar las fotos esperadas que llegaron
terminal-photo-forget = Dejar de esperar una foto en un archivo
terminal-photo-check = Ver si cada foto coincide con el registro
terminal-photo-clear = Quitar los archivos que ninguna entrada nombra
terminal-photo-thumbnails = Hacer de nuevo todas las miniaturas
terminal-photo-originals = Mostrar o decidir si las imágenes se conservan como llegaron
terminal-argument-about = Un punto, compartimiento o fuente por su código, o el vehículo por su nombre
terminal-argument-photo = El archivo: JPEG o PNG
terminal-argument-keep = yes o no; sin nada, se muestra
terminal-option-caption = Lo que hay que ver
terminal-command-plan = Lo que más importa en los minutos disponibles para los compartimentos
terminal-option-minutes = Los minutos disponibles para los compartimentos; sin ellos se retoma un plan que se dejó
terminal-option-why = De qué se compone cada rango
terminal-option-follow = Seguir el plan en el recorrido abierto, o retomarlo
terminal-option-leave = Dejar el plan que se sigue
