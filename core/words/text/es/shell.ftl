shell-closed = Ocurrió algo inesperado y se cerró el cuaderno. Lo anotado está guardado. Cierre la aplicación y ábrala de nuevo.
shell-back = Atrás
