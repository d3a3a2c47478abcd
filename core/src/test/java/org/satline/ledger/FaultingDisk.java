package org.satline.ledger;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A disk in memory whose power can be cut, and which can fail, before or within any step. It keeps apart what was asked of it and what is
 * durable: the bytes of a file are so after the file was forced, a name after its folder was.
 */
final class FaultingDisk implements Disk {
    /** What a power cut leaves of that which was not forced. */
    enum Survival {
        NOTHING,
        NAMES,
        NAMES_AND_HALF,
        ALL
    }

    /** The bytes of a file. */
    static final class Content {
        byte[] live = {};
        byte[] durable = {};
        boolean locked;
    }

    private final Map<Path, Content> names = new LinkedHashMap<>();
    private final Map<Path, Content> durableNames = new LinkedHashMap<>();
    private final List<String> steps = new ArrayList<>();
    private int cutAt = Integer.MAX_VALUE;
    private int failAt = Integer.MAX_VALUE;
    private long room = Long.MAX_VALUE;

    /** Cuts the power at a step, counted from 0. */
    FaultingDisk cutAt(int step) {
        cutAt = step;
        return this;
    }

    /** Fails once, at a step, counted from 0. */
    FaultingDisk failAt(int step) {
        failAt = step;
        return this;
    }

    /** How many bytes fit on the disk from now on. */
    FaultingDisk room(long bytes) {
        room = bytes;
        return this;
    }

    FaultingDisk with(Path path, byte[] bytes) {
        Content content = new Content();
        content.live = bytes.clone();
        content.durable = bytes.clone();
        names.put(path, content);
        durableNames.put(path, content);
        return this;
    }

    List<String> steps() {
        return List.copyOf(steps);
    }

    /** The bytes of a file as a program sees them. */
    byte[] bytes(Path path) {
        Content content = names.get(path);
        return content == null ? new byte[0] : content.live.clone();
    }

    List<Path> files() {
        return List.copyOf(names.keySet());
    }

    /** The disk as it is found when the power is back. */
    FaultingDisk afterPowerCut(Survival survival) {
        FaultingDisk after = new FaultingDisk();
        (survival == Survival.NOTHING ? durableNames : names).forEach((path, content) -> {
            int grown = Math.max(0, content.live.length - content.durable.length);
            after.with(
                    path,
                    switch (survival) {
                        case NOTHING, NAMES -> content.durable;
                        case NAMES_AND_HALF ->
                            grown == 0
                                    ? content.durable
                                    : Arrays.copyOf(content.live, content.durable.length + grown / 2);
                        case ALL -> content.live;
                    });
        });
        return after;
    }

    /** Every change passes here first. */
    void step(String what) throws IOException {
        int number = steps.size();
        if (number >= cutAt) {
            throw new IOException("the power is off");
        }
        steps.add(what);
        if (number == failAt) {
            throw new IOException("the disk fails at " + what);
        }
    }

    /** How many of some bytes are written by the step to come; fewer than all where it shall fail or the disk is full. */
    int written(int bytes) {
        long used = names.values().stream()
                .mapToLong(content -> content.live.length)
                .sum();
        long fit = Math.max(0, Math.min(bytes, room - used));
        return steps.size() == failAt || steps.size() == cutAt ? bytes / 2 : (int) fit;
    }

    @Override
    public Optional<Facts> facts(Path path) {
        return Optional.ofNullable(names.get(path)).map(content -> new Facts(true, 1, Optional.of(content)));
    }

    @Override
    public FileChannel open(Path path, OpenOption... options) throws IOException {
        List<OpenOption> asked = List.of(options);
        if (!names.containsKey(path)) {
            if (!asked.contains(StandardOpenOption.CREATE)) {
                throw new NoSuchFileException(path.toString());
            }
            step("create " + path.getFileName());
            names.put(path, new Content());
        }
        MemoryChannel channel = new MemoryChannel(this, String.valueOf(path.getFileName()), content(path));
        if (asked.contains(StandardOpenOption.TRUNCATE_EXISTING) && channel.size() > 0) {
            channel.truncate(0);
        }
        return channel;
    }

    private Content content(Path path) throws NoSuchFileException {
        Content content = names.get(path);
        if (content == null) {
            throw new NoSuchFileException(path.toString());
        }
        return content;
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        step("rename " + from.getFileName() + " to " + to.getFileName());
        names.put(to, content(from));
        names.remove(from);
    }

    @Override
    public void forceFolder(Path folder) throws IOException {
        step("force folder");
        durableNames.clear();
        durableNames.putAll(names);
    }
}
