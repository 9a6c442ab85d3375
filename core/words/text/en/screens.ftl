### Words of the screens.

## The questions and keys of a point, shared by all shells

screen-question-moved = Did it move?
screen-question-angle = How far did you turn it in?
screen-note-held = clicked, no turn
screen-note-moved = turned, then clicked
screen-line-dead = Only { $bay } dead
screen-line-live = Treat as live until proved
screen-stop-for-now = Stop for now
screen-close-early = Close up early
screen-keep-out = Keep out
screen-no-tool-tug = No tool. Tug.
