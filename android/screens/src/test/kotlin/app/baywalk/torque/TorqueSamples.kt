package app.baywalk.torque

import app.baywalk.Sample
import app.baywalk.Samples

val torqueSamples = Samples { stage, _ ->
    if (!stage.before) return@Samples emptyList()
    val model = TorqueModel(stage.scene.core)
    val asked = model.state
    while (true) model.state.open?.let { model.send(TorqueEvent.Choose(it.column, it.options.first().code)) } ?: break
    val number = model.state
    model.send(TorqueEvent.Number("45 lbf.in"))
    model.send(TorqueEvent.Advise)
    val advised = model.state
    listOf(
        Sample("torque") { TorqueView(asked, {}, {}) },
        Sample("torque number") { TorqueView(number, {}, {}) },
        Sample("torque advice") { TorqueView(advised, {}, {}) },
    )
}
