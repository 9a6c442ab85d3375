import Bridge

extension Core {
    /// The core over a logbook that is open.
    public static func live(_ book: Baywalk) -> Core {
        Core(
            text: { try book.text() },
            rigs: { try book.rigs() },
            layouts: { try book.layouts() },
            startFrom: { try book.startFrom(layout: $0, name: $1) },
            rig: { try book.rig(rig: $0, width: $1) },
            firstWalk: { try book.firstWalk(rig: $0) },
            start: { try book.start(rig: $0, person: "", bays: $1, secondLook: $2) },
            card: { try book.card(rig: $0, room: $1) },
            press: { try book.press(rig: $0, press: $1, room: $2) },
            weigh: { try book.weigh(rig: $0, key: $1, typed: $2, width: $3) },
            bay: { try book.bay(rig: $0, code: $1, width: $2) },
            photoShow: { try book.photoShow(rig: $0, bay: $1) },
            pin: { try book.pin(rig: $0, point: $1, at: $2) },
            photoAdd: { try book.photoAdd(rig: $0, place: $1, path: $2, caption: "") },
            photoExpected: { try book.photoExpected(rig: $0, place: $1, path: $2) },
            photoForgotten: { try book.photoForgotten(path: $0) },
            photosArrived: { try book.photosArrived() },
            result: { try book.result(rig: $0, width: $1) },
            papers: { try book.papers(rig: $0) },
            writePaper: { try book.writePaper(rig: $0, key: $1, country: $2, folder: $3) },
            findings: { try book.findings(rig: $0) },
            findingsPress: { try book.findingsPress(rig: $0, key: $1, answers: $2) },
            past: { try book.past(rig: $0, code: $1, width: $2) },
            tables: { try book.tables(path: $0) },
            calendar: { try book.calendar(rig: $0) },
            notices: { try book.notices() },
            torqueForm: { try book.torqueForm() },
            torque: { try book.torque(fields: $0) },
            sources: { try book.sources(rig: $0) },
            change: { try book.change(rig: $0, code: $1, fields: $2) },
            setUpForm: { try book.setUpForm(rig: $0, piece: $1, bay: $2) },
            setUpAdd: { try book.setUpAdd(rig: $0, piece: $1, bay: $2, answers: $3) },
            setUpCopy: { try book.setUpCopy(rig: $0, point: $1) },
            facts: { try book.facts(rig: $0, code: $1) },
            retire: { try book.retire(rig: $0, code: $1) },
            plan: { try book.plan(rig: $0, minutes: $1) },
            followPlan: { try book.followPlan(rig: $0, minutes: $1) },
            leavePlan: { try book.leavePlan(rig: $0) },
            whenNext: { try book.whenNext(rig: $0) },
            whenPress: { try book.whenPress(rig: $0, key: $1, typed: $2) },
            backUp: { try book.backUp(path: $0, passphrase: $1, watcher: ToTheEnd()) },
            restorePlan: { try book.restorePlan(from: $0, passphrase: $1, watcher: ToTheEnd()) },
            restore: { try book.restore(from: $0, passphrase: $1, watcher: ToTheEnd()) },
            verify: { try book.verify() },
            scrolled: { try book.scrolled(place: $0) },
            keepScrolled: { try book.keepScrolled(place: $0, down: $1) }
        )
    }
}

/// Goes on to the end of a long job.
private final class ToTheEnd: Watcher {
    func goesOn(progress: Bridge.Progress) throws -> Bool { true }
}
