package org.satline.ledger;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.channels.ReadableByteChannel;
import java.nio.channels.WritableByteChannel;
import java.util.Arrays;

/** A channel on a file of a {@link FaultingDisk}: what the ledger uses of one, and nothing else. */
final class MemoryChannel extends FileChannel {
    private final FaultingDisk disk;
    private final String name;
    private final FaultingDisk.Content content;
    private boolean holdsLock;

    MemoryChannel(FaultingDisk disk, String name, FaultingDisk.Content content) {
        this.disk = disk;
        this.name = name;
        this.content = content;
    }

    @Override
    public int read(ByteBuffer target, long position) {
        int count = (int) Math.min(target.remaining(), content.live.length - position);
        if (count <= 0) {
            return -1;
        }
        target.put(content.live, (int) position, count);
        return count;
    }

    @Override
    public int write(ByteBuffer source, long position) throws IOException {
        int asked = source.remaining();
        int count = disk.written(asked);
        byte[] bytes = new byte[count];
        source.get(bytes);
        IOException failure = null;
        try {
            disk.step("write " + name);
        } catch (IOException e) {
            failure = e; // half of it may have reached the disk all the same
        }
        if (position + count > content.live.length) {
            content.live = Arrays.copyOf(content.live, (int) position + count);
        }
        System.arraycopy(bytes, 0, content.live, (int) position, count);
        if (failure != null) {
            throw failure;
        }
        if (count == 0 && asked > 0) {
            throw new IOException("no space left on the disk");
        }
        return count;
    }

    @Override
    public long size() {
        return content.live.length;
    }

    @Override
    public FileChannel truncate(long size) throws IOException {
        disk.step("truncate " + name);
        content.live = Arrays.copyOf(content.live, (int) Math.min(size, content.live.length));
        return this;
    }

    @Override
    public void force(boolean metaData) throws IOException {
        disk.step("force " + name);
        content.durable = content.live.clone();
    }

    @Override
    public FileLock tryLock(long position, long size, boolean shared) {
        if (content.locked) {
            throw new OverlappingFileLockException();
        }
        content.locked = true;
        holdsLock = true;
        return new FileLock(this, position, size, shared) {
            @Override
            public boolean isValid() {
                return content.locked;
            }

            @Override
            public void release() {
                content.locked = false;
            }
        };
    }

    @Override
    protected void implCloseChannel() {
        if (holdsLock) {
            content.locked = false;
        }
    }

    @Override
    public FileLock lock(long position, long size, boolean shared) {
        return tryLock(position, size, shared);
    }

    @Override
    public int read(ByteBuffer target) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long read(ByteBuffer[] targets, int offset, int length) {
        throw new UnsupportedOperationException();
    }

    @Override
    public int write(ByteBuffer source) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long write(ByteBuffer[] sources, int offset, int length) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long position() {
        throw new UnsupportedOperationException();
    }

    @Override
    public FileChannel position(long position) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long transferTo(long position, long count, WritableByteChannel target) {
        throw new UnsupportedOperationException();
    }

    @Override
    public long transferFrom(ReadableByteChannel source, long position, long count) {
        throw new UnsupportedOperationException();
    }

    @Override
    public MappedByteBuffer map(MapMode mode, long position, long size) {
        throw new UnsupportedOperationException();
    }
}
