import Bridge
import SwiftUI
import Testing
@testable import Kit
@testable import Screens

/// A hand on the screen of the whole app: it sees the tree that was built and presses what stands there.
@MainActor
final class Fingers {
    let app: AppModel
    let watched: Watched<RootView>

    init(_ app: AppModel, size: DynamicTypeSize = .large, room: CGSize = CGSize(width: 360, height: 780)) {
        self.app = app
        watched = Watched(RootView(app))
        watched.values.dynamicTypeSize = size
        watched.size = room
    }

    var tree: Node { watched.tree }

    /// The key that begins with some words.
    func key(_ words: String) throws -> Node {
        let tree = tree
        return try #require(tree.keys.first { $0.said.hasPrefix(words) }, "no “\(words)” in\n\(tree.drawn())")
    }

    func press(_ words: String) throws {
        let press = try #require(try key(words).press)
        press()
    }

    func type(_ text: String) throws {
        let type = try #require(tree.keys.compactMap(\.type).first)
        type(text)
    }

    /// All that can be read.
    var text: String { tree.all.map(\.text).filter { !$0.isEmpty }.joined(separator: "\n") }
}
