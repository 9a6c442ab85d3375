//! One change of a rig's book.

use super::shape::choice;
use super::{Bay, BayPhoto, Book, Device, Point, Rig, Source, Tool};
use baywalk_domain::rig;

choice! {
    /// What is put into the book.
    BookChange = rig::BookChange {
        Whole(whole: Box<Book>),
        Rig(rig: Box<Rig>),
        Source(source: Box<Source>),
        Bay(bay: Box<Bay>),
        Device(device: Box<Device>),
        Point(point: Box<Point>),
        Tool(tool: Box<Tool>),
        BayPhoto(bay_photo: Box<BayPhoto>),
    }
}
