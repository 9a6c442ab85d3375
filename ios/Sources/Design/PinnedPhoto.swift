import Bridge
import SwiftUI
import UIKit

/// The highest that a photo grows, as a share of its width.
private let tallest = 1.2
private let parts = 1000.0

/// A photo over the whole width with its pins at their places. Where it can be pressed, the place is handed over in
/// thousandths of its width and height.
public struct PinnedPhoto: View {
    @Environment(\.inner) private var width
    let path: String?
    let words: String
    let pins: [PinView]
    let onPlace: (@MainActor (Int, Int) -> Void)?

    public init(path: String?, words: String, pins: [PinView], onPlace: (@MainActor (Int, Int) -> Void)? = nil) {
        (self.path, self.words, self.pins, self.onPlace) = (path, words, pins, onPlace)
    }

    public var body: some View {
        if let image = path.flatMap({ UIImage(contentsOfFile: $0) }), image.size.width > 0 {
            LaidPhoto(image: image, size: laid(image.size), words: words, pins: pins, onPlace: onPlace)
        } else {
            Words(words, .body)
        }
    }

    private func laid(_ size: CGSize) -> CGSize {
        let share = size.height / size.width
        let across = share <= tallest ? width : width * tallest / share
        return CGSize(width: across, height: across * share)
    }
}

private struct LaidPhoto: View {
    @Environment(\.tokens) private var tokens
    let image: UIImage
    let size: CGSize
    let words: String
    let pins: [PinView]
    let onPlace: (@MainActor (Int, Int) -> Void)?

    var body: some View {
        let photo = ZStack {
            // By night a photo is as dim and as red as what stands around it.
            Image(uiImage: image).resizable().colorMultiply(tokens.night ? tokens.ink : Color(red: 1, green: 1, blue: 1))
            ForEach(pins, id: \.pin.code) { pin in
                Painted(pin.glyph).position(x: size.width * Double(pin.pin.across) / parts, y: size.height * Double(pin.pin.down) / parts)
            }
        }
        .frame(width: size.width, height: size.height)
        .overlay { Rectangle().strokeBorder(tokens.ink, lineWidth: 2) }
        .accessibilityElement(children: .ignore)
        .accessibilityLabel(words)
        .accessibilityAddTraits(.isImage)
        if let onPlace {
            photo.onTapGesture { at in onPlace(part(at.x, of: size.width), part(at.y, of: size.height)) }
        } else {
            photo
        }
    }

    private func part(_ at: Double, of whole: Double) -> Int { Int(min(max(at / whole * parts, 0), parts)) }
}
