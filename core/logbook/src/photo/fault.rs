//! Why a file is not taken in as a photo.

/// Why a file is not taken in as a photo.
#[derive(Debug, Clone, PartialEq, Eq, thiserror::Error)]
pub enum PhotoFault {
    /// It has no bytes: the camera has written nothing.
    #[error("the file is empty")]
    Empty,
    /// It is no picture by its first bytes, whatever its name says.
    #[error("neither JPEG nor PNG")]
    NotAPhoto,
    /// It is a picture of a form that is not read.
    #[error("{}, not JPEG or PNG", .found.name())]
    Foreign {
        /// The form.
        found: Foreign,
    },
    /// The file is too large.
    #[error("{found} bytes, more than {most}")]
    TooLarge {
        /// How many bytes it has, as far as they were counted.
        found: u64,
        /// The most bytes there may be.
        most: u64,
    },
    /// It has more pixels than are taken in.
    #[error("{width} by {height} pixels, more than {most}")]
    TooManyPixels {
        /// Its width.
        width: u32,
        /// Its height.
        height: u32,
        /// The most pixels of a picture of this form.
        most: u64,
    },
    /// A JPEG whose samples are spread over more scans than a picture of its size may have.
    #[error("more than {most} scans over {pixels} pixels")]
    TooManyScans {
        /// How many pixels it has.
        pixels: u64,
        /// The most scans that it may have.
        most: u64,
    },
    /// The file ends before the picture does, or has fewer bytes than such a picture can have.
    #[error("the file ends before the picture does")]
    CutOff,
    /// What stands in the file is no sound picture.
    #[error("damaged: {0}")]
    Damaged(String),
    /// A JPEG of a form that cameras don't write: four inks, arithmetic coding, 12 bits.
    #[error("a form that is not read: {0}")]
    Unsupported(String),
}

/// Forms of pictures that are recognised and not read.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Foreign {
    /// HEIF with HEVC inside (ISO/IEC 23008-12).
    Heic,
    /// HEIF with AV1 inside.
    Avif,
    /// WebP.
    WebP,
    /// GIF.
    Gif,
    /// TIFF, and the raw forms of cameras that are built on it.
    Tiff,
    /// BMP.
    Bmp,
    /// JPEG XL (ISO/IEC 18181).
    JpegXl,
    /// Video in an ISO base media file.
    Mp4,
}

impl Foreign {
    /// The name of the form, the same in every language.
    #[must_use]
    pub const fn name(self) -> &'static str {
        match self {
            Self::Heic => "HEIC",
            Self::Avif => "AVIF",
            Self::WebP => "WebP",
            Self::Gif => "GIF",
            Self::Tiff => "TIFF",
            Self::Bmp => "BMP",
            Self::JpegXl => "JPEG XL",
            Self::Mp4 => "MP4",
        }
    }
}

impl From<jpeg_decoder::Error> for PhotoFault {
    fn from(error: jpeg_decoder::Error) -> Self {
        use jpeg_decoder::Error;
        match error {
            Error::Io(error) if error.kind() == std::io::ErrorKind::UnexpectedEof => Self::CutOff,
            Error::Unsupported(feature) => Self::Unsupported(format!("{feature:?}")),
            other => Self::Damaged(other.to_string()),
        }
    }
}

impl From<image::ImageError> for PhotoFault {
    fn from(error: image::ImageError) -> Self {
        use image::ImageError;
        match error {
            ImageError::IoError(error) if error.kind() == std::io::ErrorKind::UnexpectedEof => {
                Self::CutOff
            }
            ImageError::Unsupported(error) => Self::Unsupported(error.to_string()),
            other => Self::Damaged(other.to_string()),
        }
    }
}
