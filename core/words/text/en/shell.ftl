shell-closed = Something unexpected happened and the logbook was closed. What was recorded is kept. Close the app and open it again.
shell-back = Back
