package app.baywalk

import androidx.compose.ui.geometry.Rect
import androidx.compose.ui.graphics.Color
import androidx.compose.ui.graphics.PixelMap
import androidx.compose.ui.graphics.luminance
import androidx.compose.ui.semantics.SemanticsActions
import androidx.compose.ui.semantics.SemanticsNode
import androidx.compose.ui.semantics.SemanticsProperties
import androidx.compose.ui.semantics.getOrNull
import androidx.compose.ui.text.TextLayoutResult
import app.baywalk.design.breaksAWord

/** All nodes below a node, itself first. */
fun SemanticsNode.all(): List<SemanticsNode> = listOf(this) + children.flatMap { it.all() }

/** What a screen reader says of a node. */
fun SemanticsNode.said(): String =
    (config.getOrNull(SemanticsProperties.ContentDescription).orEmpty() +
        config.getOrNull(SemanticsProperties.Text).orEmpty().map { it.text }).joinToString().trim()

private fun SemanticsNode.acts() =
    config.getOrNull(SemanticsActions.OnClick) != null || config.getOrNull(SemanticsActions.SetText) != null

private fun SemanticsNode.dp(px: Float) = px / layoutInfo.density.density

/**
 * Faults of what can be pressed, on the merged tree: no label, no role, too small. The laid-out size is judged, since the
 * bounds of touch are always stretched. Keys that record a check, by their words, are larger, apart, low and in sight.
 */
fun keyFaults(root: SemanticsNode, recording: List<String>): List<String> {
    val keys = root.all().filter { it.acts() }
    val high = root.size.height
    return keys.flatMap { key ->
        val records = recording.any { key.said().startsWith(it) }
        val (width, height) = key.dp(key.size.width.toFloat()) to key.dp(key.size.height.toFloat())
        val least = if (records) 104f to 72f else 56f to 56f
        listOfNotNull(
            "no label at ${key.boundsInRoot}".takeIf { key.said().isEmpty() },
            "no role: ${key.said()}".takeIf {
                key.config.getOrNull(SemanticsProperties.Role) == null && key.config.getOrNull(SemanticsActions.SetText) == null
            },
            "$width × $height dp, at least ${least.first} × ${least.second}: ${key.said()}"
                .takeIf { width < least.first - HALF || height < least.second - HALF },
            "not whole in sight: ${key.said()}".takeIf { records && key.boundsInRoot.height < key.size.height - 1 },
            "above the lower 60 %: ${key.said()}".takeIf {
                records && root.size.height > root.size.width && key.boundsInRoot.top < high * 0.4f - 1
            },
        )
    } + tooNear(keys.filter { key -> recording.any { key.said().startsWith(it) } })
}

private fun tooNear(keys: List<SemanticsNode>): List<String> = keys.flatMapIndexed { at, one ->
    keys.drop(at + 1).mapNotNull { other ->
        val gap = one.dp(gap(one.boundsInRoot, other.boundsInRoot))
        "$gap dp between ${one.said()} and ${other.said()}, at least 12".takeIf { gap < 12f - HALF }
    }
}

private fun gap(a: Rect, b: Rect): Float =
    maxOf(b.left - a.right, a.left - b.right, b.top - a.bottom, a.top - b.bottom)

/** Texts that do not fit their place, on the unmerged tree: cut in a line, in height, or by what stands around them. */
fun clippingFaults(root: SemanticsNode): List<String> = root.all().flatMap { node ->
    layoutsOf(node).mapNotNull { laid ->
        val cut = laid.didOverflowHeight || laid.multiParagraph.didExceedMaxLines || (0 until laid.lineCount).any {
            laid.isLineEllipsized(it) || laid.getLineRight(it) - laid.getLineLeft(it) > laid.size.width + 1
        }
        // Up and down a text may be scrolled out of sight; at its sides it may not.
        val seen = node.boundsInRoot
        val beside = seen.height > 0 && seen.width < node.size.width - 1
        val text = laid.layoutInput.text
        val broken = breaksAWord(laid) && text.split(' ').none { it.length > LONGEST }
        "cut: $text".takeIf { cut || beside } ?: "a word is broken: $text".takeIf { broken }
    }
}

private fun layoutsOf(node: SemanticsNode): List<TextLayoutResult> = mutableListOf<TextLayoutResult>().also {
    node.config.getOrNull(SemanticsActions.GetTextLayoutResult)?.action?.invoke(it)
}

/** Texts whose rendered colours have less contrast than [least] (WCAG 2.2, 1.4.3 and its definition of contrast ratio). */
fun contrastFaults(root: SemanticsNode, pixels: PixelMap, least: Float = 7f): List<String> =
    root.all().filter { node ->
        // A text that is partly scrolled out of sight shows too little of its ink to be judged.
        layoutsOf(node).any { it.layoutInput.text.isNotBlank() } && node.boundsInRoot.height >= node.size.height - 1
    }.mapNotNull { node ->
        val colours = coloursIn(node.boundsInRoot, pixels)
        val ground = colours.maxByOrNull { it.value }?.key ?: return@mapNotNull null
        val best = colours.filterValues { it >= 3 }.keys.maxOf { contrast(it, ground) }
        "contrast $best, at least $least: ${node.said()}".takeIf { best < least }
    }

private fun coloursIn(where: Rect, pixels: PixelMap): Map<Color, Int> {
    val seen = HashMap<Color, Int>()
    for (y in where.top.toInt().coerceAtLeast(0) until where.bottom.toInt().coerceAtMost(pixels.height)) {
        for (x in where.left.toInt().coerceAtLeast(0) until where.right.toInt().coerceAtMost(pixels.width)) {
            seen.merge(pixels[x, y], 1, Int::plus)
        }
    }
    return seen
}

/** The contrast ratio of two colours, from 1 to 21. */
fun contrast(a: Color, b: Color): Float {
    val (light, dark) = listOf(a.luminance(), b.luminance()).sortedDescending()
    return (light + 0.05f) / (dark + 0.05f)
}

private const val HALF = 0.5f

/** Beyond so many letters a word, as a digest, may be broken. */
private const val LONGEST = 24
