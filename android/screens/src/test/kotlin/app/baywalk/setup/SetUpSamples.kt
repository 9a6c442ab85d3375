package app.baywalk.setup

import app.baywalk.Sample
import app.baywalk.Samples
import app.baywalk.screens.Added
import app.baywalk.screens.Piece

val setUpSamples = Samples { stage, _ ->
    if (!stage.before) return@Samples emptyList()
    val (core, rig) = stage.scene.core to stage.scene.rig
    val bay = core.rig(rig, 328.0).screen.bays.first().code
    val point = core.bay(rig, bay, 360.0).points.first().code
    val sources = SetUpState(core.sources(rig))
    val facts = FillingState(core.facts(rig, point))
    val torque = facts.facts.facts.first { it.column == "torque" }
    val asked = { piece: Piece, answers: List<String> -> AddingState(core.setUpForm(rig, piece, bay), answers) }
    val added = asked(Piece.TERMINAL, List(4) { "" }).copy(added = Added("A9", emptyList(), "A9 is in the book: push-in clamp.", true))
    listOf(
        Sample("set up") { SetUpView(sources, {}, {}) },
        Sample("new bay") { AddingView(asked(Piece.BAY, listOf("step bay")), {}, false, {}) },
        Sample("new device") { AddingView(asked(Piece.DEVICE, listOf("dc_panel", "", "dc")), {}, false, {}) },
        Sample("new terminal") { AddingView(asked(Piece.TERMINAL, listOf("D1", "push_in")), {}, true, {}) },
        Sample("new terminal added") { AddingView(added, {}, true, {}) },
        Sample("facts") { FillingView(facts, {}, {}) },
        Sample("facts torque") { FillingView(facts.copy(open = torque, typed = torque.value), {}, {}) },
    )
}
