import Bridge

/// Where a person is.
public indirect enum Place: Equatable, Hashable, Sendable {
    case rigs
    case rig(String)
    case walk(String)
    case bay(String, String)
    case result(String)
    case safe(back: Place)
    case torque(back: Place)
    case pins(String, String)
    case setUp(String)
    case plan(String)
    case whenNext(String)
    case findings(String)
    case past(String, String?, back: Place)
    case papers(String, back: Place)
    case adding(String, Piece, bay: String, back: Place)
    case facts(String, String, back: Place)

    /// Where Back leads; nowhere from the list of rigs.
    public var back: Place? {
        switch self {
        case .rigs: nil
        case .rig: .rigs
        case .walk(let rig), .bay(let rig, _), .result(let rig), .setUp(let rig), .plan(let rig), .whenNext(let rig),
            .findings(let rig): .rig(rig)
        case .pins(let rig, let bay): .bay(rig, bay)
        case .safe(let back), .torque(let back), .papers(_, let back), .past(_, _, let back), .adding(_, _, _, let back), .facts(_, _, let back): back
        }
    }
}
