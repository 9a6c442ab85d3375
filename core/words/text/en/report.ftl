### Words of the report.

## Headings of the report

report-title = Walk report
report-out-of-service = Out of service
report-not-judged = Not judged
report-as-found = As found
report-as-left = As left
report-isolation = Taken away and proved dead
report-findings = Findings
report-next = When next
report-cautions = Cautions
