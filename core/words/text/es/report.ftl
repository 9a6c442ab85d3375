### Words of the report.

## Headings of the report

report-title = Informe del recorrido
report-out-of-service = Fuera de servicio
report-not-judged = Sin evaluar
report-as-found = Como se encontró
report-as-left = Como se dejó
report-isolation = Cortado y comprobado
report-findings = Hallazgos
report-next = Cuándo sigue
report-cautions = Precauciones
