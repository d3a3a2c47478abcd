package org.satline.fleet;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.flink.connector.file.src.FileSourceSplit;
import org.apache.flink.connector.file.src.assigners.FileSplitAssigner;
import org.jspecify.annotations.Nullable;

/**
 * Hands out files in the order of their names, so that time rises along the files and nothing is late only because its
 * file was read late.
 */
final class OrderedFiles implements FileSplitAssigner {
    private final List<FileSourceSplit> waiting = new ArrayList<>();

    OrderedFiles(Collection<FileSourceSplit> splits) {
        addSplits(splits);
    }

    @Override
    public Optional<FileSourceSplit> getNext(@Nullable String host) {
        return waiting.isEmpty() ? Optional.empty() : Optional.of(waiting.remove(0));
    }

    @Override
    public void addSplits(Collection<FileSourceSplit> splits) {
        waiting.addAll(splits);
        waiting.sort(
                Comparator.comparing((FileSourceSplit split) -> split.path().getName())
                        .thenComparingLong(FileSourceSplit::offset));
    }

    @Override
    public Collection<FileSourceSplit> remainingSplits() {
        return List.copyOf(waiting);
    }
}
