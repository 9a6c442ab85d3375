package app.baywalk.bench

import java.io.File
import java.io.RandomAccessFile
import java.nio.ByteBuffer

/** The bare peer: 200 bytes written over and synced (`fdatasync`). */
class Raw(file: File) : AutoCloseable {
    private val open = RandomAccessFile(file, "rw")
    private val bytes = ByteBuffer.allocate(200)

    fun write() {
        bytes.clear()
        open.channel.write(bytes, 0)
        open.channel.force(false)
    }

    override fun close() = open.close()
}
