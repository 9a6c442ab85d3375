//! Drawings from outside: geometry, rooms, properties over random rigs, and the text of an SVG.

#[cfg(test)]
mod gallery;
#[cfg(test)]
mod golden;
#[cfg(test)]
mod paper;
#[cfg(test)]
mod raster;
#[cfg(test)]
mod rig;
#[cfg(test)]
mod rooms;
#[cfg(test)]
mod screws;
#[cfg(test)]
mod strips;
