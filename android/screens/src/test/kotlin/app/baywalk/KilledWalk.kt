package app.baywalk

import app.baywalk.card.CardModel
import app.baywalk.mobile.Baywalk
import java.io.File

/**
 * A walk in a process of its own, which [KillTest] kills: each card is told once it is shown. Asked to be `early`, it tells a
 * card before its act is kept and stops there: the fault that the test has to find.
 */
fun main(args: Array<String>) {
    val (folder, rig) = args
    val core = Baywalk.open(File(folder, "store").path, listOf("en"))
    if (!core.rig(rig, 328.0).walking) core.start(rig, "Ada", emptyList(), false)
    var ended = false
    val model = CardModel(core, rig, Sight().room, { ended = true })
    println(told(model.state.view))
    if ("early" in args) {
        val card = model.state.view.card
        println(told(model.state.view.copy(card = card.copy(seq = card.seq + 1u))))
        Runtime.getRuntime().halt(9)
    }
    while (!ended) {
        model.answerFirst()
        if (!ended) println(told(model.state.view))
    }
}
