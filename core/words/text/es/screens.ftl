### Words of the screens.

## The questions and keys of a point, shared by all shells

screen-question-moved = ¿Se movió?
screen-question-angle = ¿Cuánto lo giró?
screen-note-held = hizo clic, sin giro
screen-note-moved = giró y luego hizo clic
screen-line-dead = Solo { $bay } sin tensión
screen-line-live = Trate como con tensión hasta comprobar
screen-stop-for-now = Parar por ahora
screen-close-early = Cerrar antes
screen-keep-out = No tocar
screen-no-tool-tug = Sin herramienta. Jale.
