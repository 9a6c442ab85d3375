import Kit
import SwiftUI

/// Under this height the keys stand beside the content.
private let low = 480.0

/// A screen: a head, content that scrolls, and keys that stay under the thumb. On a low screen (a phone turned on its side)
/// the keys stand beside the content.
public struct Sheet<Top: View, Keys: View, Content: View>: View {
    @Environment(\.tokens) private var tokens
    @Environment(\.dynamicTypeSize) private var size
    let place: String
    let keysFromTop: Bool
    let head: Top
    let keys: Keys
    let content: Content

    /// `place` is the name under which it is kept where the content was scrolled to. `keysFromTop` says whether keys that do
    /// not fit show their first one, as those of a question do, and not their last.
    public init(place: String = "", keysFromTop: Bool = false, @ViewBuilder head: () -> Top, @ViewBuilder keys: () -> Keys, @ViewBuilder content: () -> Content) {
        (self.place, self.keysFromTop) = (place, keysFromTop)
        (self.head, self.keys, self.content) = (head(), keys(), content())
    }

    public var body: some View {
        GeometryReader { room in
            laid(room.size)
                .environment(\.inner, inner(room.size))
                .environment(\.tall, room.size.height / size.scale > 700)
                .frame(maxWidth: .infinity, maxHeight: .infinity, alignment: .top)
                .background(tokens.plate)
        }
    }

    private func isLow(_ room: CGSize) -> Bool { room.height < low && room.width > room.height }

    private func inner(_ room: CGSize) -> Double {
        (isLow(room) ? room.width / 2 : min(room.width, widest)) - 2 * margin
    }

    @ViewBuilder private func laid(_ room: CGSize) -> some View {
        if isLow(room) {
            HStack(spacing: 0) {
                VStack(spacing: 0) {
                    head
                    Scrolling(place: place) { content }
                }
                keyColumn(above: 2, below: 6).frame(maxWidth: .infinity)
            }
        } else {
            VStack(spacing: 0) {
                head
                // What is read keeps a quarter of the screen, however many keys there are.
                Scrolling(place: place) { content }.frame(minHeight: room.height * 0.25)
                keyColumn(above: 8, below: margin).layoutPriority(1)
            }
            .frame(maxWidth: widest)
        }
    }

    /// The keys, the last of them under the thumb; where they do not fit they scroll.
    private func keyColumn(above: Double, below: Double) -> some View {
        let column = VStack(spacing: 12) { keys }
            .padding(.horizontal, margin)
            .padding(.top, above)
            .padding(.bottom, below)
        return ViewThatFits(in: .vertical) {
            column
            ScrollView { column }.defaultScrollAnchor(keysFromTop ? .top : .bottom)
        }
    }
}

/// The content of a screen; it is found again at the row where it was left.
private struct Scrolling<Content: View>: View {
    @Environment(\.scrolled) private var scrolled
    let place: String
    @ViewBuilder let content: Content

    var body: some View {
        let column = VStack(alignment: .leading, spacing: 8) { content }
            .scrollTargetLayout()
            .padding(.horizontal, margin)
            .padding(.bottom, 4)
        if let scrolled, !place.isEmpty {
            ScrollView { column }.scrollPosition(id: row(scrolled))
        } else {
            ScrollView { column }
        }
    }

    private func row(_ scrolled: Scrolled) -> Binding<Int?> {
        let place = place
        return Binding(
            get: { MainActor.assumeIsolated { scrolled.kept(place) } },
            set: { row in MainActor.assumeIsolated { scrolled.keep(place, row) } }
        )
    }
}
