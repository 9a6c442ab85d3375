@_exported import Foundation

@MainActor @preconcurrency public protocol View {
    associatedtype Body: View
    @ViewBuilder @MainActor @preconcurrency var body: Body { get }
}

extension Never: View {
    public var body: Never { fatalError() }
}

/// A view that this double knows by itself.
@MainActor protocol Drawn {
    func nodes(_ at: Surroundings) -> [Node]
}

extension View where Body == Never {
    public var body: Never { fatalError("this double has no body for \(Self.self)") }
}

/// What stands around a view while the tree is built.
@MainActor struct Surroundings {
    var values = EnvironmentValues()
    var size = CGSize(width: 360, height: 780)
    var style: ((AnyView, Bool) -> AnyView)?
    var path = ""
    let memory: Memory

    func below(_ name: String) -> Surroundings {
        var below = self
        below.path += "/" + name
        return below
    }
}

/// What lasts from one building of the tree to the next: states, and the values that changes are told of.
@MainActor final class Memory {
    var states: [String: AnyObject] = [:]
    var values: [String: Any] = [:]
    var changed = false
}

@MainActor func built(_ view: some View, _ at: Surroundings) -> [Node] {
    if let drawn = view as? any Drawn { return drawn.nodes(at) }
    let here = at.below("\(type(of: view))")
    for (number, child) in Mirror(reflecting: view).children.enumerated() {
        (child.value as? any Linked)?.link(here, "\(here.path).\(number)")
    }
    return built(view.body, here)
}

/// A wrapper that is told where its view stands.
@MainActor protocol Linked {
    func link(_ at: Surroundings, _ path: String)
}

public struct AnyView: View, Drawn {
    private let make: @MainActor (Surroundings) -> [Node]

    public init<V: View>(_ view: V) { make = { built(view, $0) } }

    func nodes(_ at: Surroundings) -> [Node] { make(at) }
}

public struct EmptyView: View, Drawn {
    public init() {}
    func nodes(_ at: Surroundings) -> [Node] { [] }
}

@resultBuilder public enum ViewBuilder {
    public static func buildBlock() -> EmptyView { EmptyView() }
    public static func buildBlock<Content: View>(_ content: Content) -> Content { content }
    @_disfavoredOverload public static func buildBlock<each Content: View>(_ content: repeat each Content) -> TupleView<(repeat each Content)> {
        TupleView((repeat each content))
    }
    public static func buildExpression<Content: View>(_ content: Content) -> Content { content }
    public static func buildIf<Content: View>(_ content: Content?) -> Content? { content }
    public static func buildEither<A: View, B: View>(first: A) -> _ConditionalContent<A, B> { .init(first: first) }
    public static func buildEither<A: View, B: View>(second: B) -> _ConditionalContent<A, B> { .init(second: second) }
}

public struct TupleView<T>: View, Drawn {
    let value: T
    public init(_ value: T) { self.value = value }

    func nodes(_ at: Surroundings) -> [Node] {
        if let one = value as? any View { return built(one, at.below("0")) }
        return Mirror(reflecting: value).children.enumerated().flatMap { number, child in
            (child.value as? any View).map { built($0, at.below("\(number)")) } ?? []
        }
    }
}

public struct _ConditionalContent<A: View, B: View>: View, Drawn {
    private let make: @MainActor (Surroundings) -> [Node]
    init(first: A) { make = { built(first, $0.below("first")) } }
    init(second: B) { make = { built(second, $0.below("second")) } }
    func nodes(_ at: Surroundings) -> [Node] { make(at) }
}

extension Optional: View where Wrapped: View {
    public var body: Never { fatalError() }
}

extension Optional: Drawn where Wrapped: View {
    func nodes(_ at: Surroundings) -> [Node] { map { built($0, at) } ?? [] }
}

public struct Group<Content: View>: View, Drawn {
    let content: Content
    public init(@ViewBuilder content: () -> Content) { self.content = content() }
    func nodes(_ at: Surroundings) -> [Node] { built(content, at) }
}

public struct ForEach<Data: RandomAccessCollection, ID: Hashable, Content: View>: View, Drawn {
    let data: Data
    let id: KeyPath<Data.Element, ID>
    let content: (Data.Element) -> Content

    public init(_ data: Data, id: KeyPath<Data.Element, ID>, @ViewBuilder content: @escaping (Data.Element) -> Content) {
        (self.data, self.id, self.content) = (data, id, content)
    }

    func nodes(_ at: Surroundings) -> [Node] {
        let ids = data.map { $0[keyPath: id] }
        precondition(Set(ids).count == ids.count, "two rows of one id in \(at.path): \(ids)")
        return data.flatMap { built(content($0), at.below("\($0[keyPath: id])")) }
    }
}
