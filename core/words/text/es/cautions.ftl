### Cautions, where the hand is about to go.

## Where the hand is about to go. Two lines at most each.

caution-label-first = La etiqueta del fabricante y el código local van primero, antes que toda cifra y paso de aquí.
caution-qualified = El trabajo en partes con tensión, o cerca de ellas, es de una persona calificada.
caution-method = OSHA y NFPA 70E se siguen aquí como método. Obligan a empleadores, no a dueños; la ley local puede pedir más.
caution-until-proved = Trate todo conductor como si tuviera tensión hasta comprobar que no la tiene.
caution-first-cover = Antes de la primera tapa: cada fuente cortada, enchufe en mano o bajo llave, sin anillos, con lentes y lámpara propia.
caution-dead-proof = Con, sin, con tensión: una fuente conocida, los conductores, otra vez la fuente. Guantes y lentes como con tensión.
caution-dead-limit = Sin tensión es menos de 1 V CA y menos de 0.5 V CC (regla nuestra). Ninguna norma da un número.
caution-pen-testers = Los detectores de proximidad no prueban nada. Solo medidor de contacto.
caution-known-source = Sin una fuente conocida del mismo tipo a mano: los compartimientos de CA quedan cerrados, solo mire.
caution-one-bay = Sin tensión aquí es solo aquí. Los demás siguen con tensión hasta comprobarlos también.
caution-battery = Una batería no se apaga: sus postes y puentes siguen con tensión. Negativo fuera y encintado primero, conectado al final.
caution-battery-bypass = El interruptor de batería suele tener puentes: bomba, arranque del generador, detector, solar, medición. Compruebe.
caution-battery-zero = Una batería que marca 0 V puede reconectarse sola. Eso no es aislamiento.
caution-battery-vent = Las baterías de plomo despiden gas explosivo: ventile primero, sin chispas ni llama.
caution-capacitor = Los inversores guardan carga después de apagados. No toque durante el tiempo de la etiqueta; luego compruebe.
caution-precharge = Conectar los capacitores de un inversor hace arco. Precargue como dice el fabricante, sin acercar la cara.
caution-wait = El fin de una espera no libera nada. Una lectura, sí.
caution-solar = Con luz, el lado de los paneles sigue con tensión, y el frío la sube. Ábralo sin carga, antes de quitar la batería.
caution-inverter-switch = Un inversor apagado en su interruptor no está aislado. Abra y bloquee su seccionador de CC; compruebe su CA.
caution-generator = Un generador puede arrancar solo. Arranque automático fuera, su interruptor abierto, cable de arranque fuera.
caution-tow = Vehículo remolcador desenchufado: su línea de carga también alimenta el remolque.
caution-exception = Esto sigue con tensión, menos de 50 V CC, sin interruptor. Arco y quemaduras: una mano, herramienta aislada, sin metal cerca.
caution-keep-out = No toque: { $what }
caution-look-only-alive = Aquí hay tensión: solo mire. Sin manos, herramientas ni puntas.
caution-gas = Gas LP cerrado en el tanque, compartimiento ventilado. Si huele a gas: salga, sin tocar interruptores.
caution-hydraulic = Las conexiones hidráulicas solo se miran, nunca se aprietan con presión. No acerque las manos a un chorro.
caution-airbag = Los conectores amarillos de bolsas de aire no se tocan.
caution-slipping-tool = Una herramienta que resbala une postes. Negativo fuera primero, herramienta forrada, otros postes cubiertos.
caution-hot-skin = Antes de tocar la carrocería: mida del metal al suelo húmedo. Más de 3 V, pare (regla nuestra).
caution-neutral-bond = No una neutro y tierra en el vehículo para la toma externa: esa unión está en el servicio del parque.
caution-weak-neutral = Un neutro flojo se oculta hasta tener carga. Electrónica fuera, carga resistiva en una línea, luego en la otra.
caution-meter-category = Medidor y puntas de la categoría del suministro, fusible bueno, puntas protegidas.

## Torque again or leave alone: both sides on one short screen

caution-retorque-title = Por qué revisar por debajo del valor y no aplicarlo otra vez
caution-retorque-against = En contra: NEC Anexo I, nota de la tabla I.1 (de segunda mano): las uniones se relajan en servicio, y revisar después no dice el torque aplicado. Bickford (de segunda mano): aplicar una y otra vez sube la precarga.
caution-retorque-for = A favor: NFPA 70B, texto anterior (de segunda mano): no suponer que lo apretado sigue así. Prensa de casas rodantes (de segunda mano): cada año, por camino y calor. NEC 110.14(D): el valor dado se cumple.
caution-retorque-ours = Regla nuestra: mirar, dedos, revisar al { $percent } %. Lo firme queda. Solo lo que se movió se ajusta, una vez. Si el fabricante pide otra cosa, se sigue.
