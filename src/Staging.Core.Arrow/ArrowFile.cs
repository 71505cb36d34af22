using Apache.Arrow;
using Apache.Arrow.Ipc;

namespace Staging.Core.Arrow;

/// <summary>Writes record batches as files that other languages read.</summary>
public static class ArrowFile
{
    /// <summary>Writes an Arrow IPC file (Feather version 2) with one batch, without compression.</summary>
    /// <param name="batch">The columns.</param>
    /// <param name="path">The file; one that is there is written over.</param>
    /// <exception cref="IOException">The file cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The file may not be written.</exception>
    public static void WriteArrow(this RecordBatch batch, string path)
    {
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        using FileStream file = File.Create(path);
        batch.WriteArrow(file);
    }

    /// <summary>The same into a stream, which stays open.</summary>
    /// <param name="batch">The columns.</param>
    /// <param name="stream">Where to.</param>
    /// <exception cref="IOException">The stream cannot be written.</exception>
    public static void WriteArrow(this RecordBatch batch, Stream stream)
    {
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(stream);
        using var writer = new ArrowFileWriter(stream, batch.Schema, leaveOpen: true);
        writer.WriteRecordBatch(batch);
        writer.WriteEnd();
    }
}
