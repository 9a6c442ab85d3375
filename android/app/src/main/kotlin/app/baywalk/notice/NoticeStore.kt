package app.baywalk.notice

import android.content.Context
import org.json.JSONArray
import org.json.JSONException
import org.json.JSONObject
import java.time.LocalDate

/**
 * Keeps the plan between starts of the phone, which drop every alarm. It is a copy of what the core lists: where it
 * can't be read it counts as empty, and the next start of the app writes it anew.
 */
class NoticeStore(context: Context) {
    private val kept = context.getSharedPreferences("notices", Context.MODE_PRIVATE)

    fun read(): NoticePlan {
        val text = kept.getString(PLAN, null) ?: return NoticePlan()
        return try { plan(JSONObject(text)) } catch (_: JSONException) { NoticePlan() }
    }

    /** Written through before it returns: a receiver may be killed right after. */
    fun write(plan: NoticePlan) {
        kept.edit().putString(PLAN, json(plan).toString()).commit()
    }

    private fun json(plan: NoticePlan) = JSONObject()
        .put("notices", JSONArray(plan.notices.map {
            JSONObject().put("about", it.about).put("rig", it.rig).put("on", it.on.toString())
                .put("title", it.title).put("words", it.words)
        }))
        .put("channel", plan.words.channel)
        .put("open", plan.words.open)
        .put("reasons", JSONArray(plan.words.reasons.map { JSONObject().put("days", it.days).put("words", it.words) }))
        .put("told", JSONArray(plan.told))
        .put("later", JSONObject().apply {
            plan.later.forEach { (key, it) ->
                put(key, JSONObject().put("until", it.until.toString()).put("why", it.why))
            }
        })

    private fun plan(from: JSONObject): NoticePlan {
        val later = from.getJSONObject("later")
        return NoticePlan(
            from.getJSONArray("notices").objects().map {
                val on = LocalDate.parse(it.getString("on"))
                Notice(it.getString("about"), it.getString("rig"), on, it.getString("title"), it.getString("words"))
            },
            NoticeWords(from.getString("channel"), from.getString("open"),
                from.getJSONArray("reasons").objects().map { Reason(it.getInt("days"), it.getString("words")) }),
            from.getJSONArray("told").let { told -> (0 until told.length()).map(told::getString).toSet() },
            later.keys().asSequence().associateWith { key ->
                val entry = later.getJSONObject(key)
                Later(LocalDate.parse(entry.getString("until")), entry.getString("why"))
            },
        )
    }

    private fun JSONArray.objects() = (0 until length()).map(::getJSONObject)

    private companion object { const val PLAN = "plan" }
}
