// A test double of the part that the app uses, for Linux; names are Apple's, from memory.
public struct UTType: Hashable, Sendable {
    let name: String
    public static let zip = UTType(name: "zip"), image = UTType(name: "image"), data = UTType(name: "data")
    public var identifier: String { "public." + name }
}
