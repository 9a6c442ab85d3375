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
