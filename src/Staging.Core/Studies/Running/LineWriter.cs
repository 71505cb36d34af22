using System.Security.Cryptography;
using System.Text;

namespace Staging.Core.Studies;

/// <summary>Writes the lines of a part, and at the end the SHA-256 of all of them.</summary>
internal sealed class LineWriter(TextWriter writer) : IDisposable
{
    private readonly IncrementalHash hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);

    public void Write(Invariant.Handler text)
    {
        string line = text.ToStringAndClear() + "\n";
        hash.AppendData(Encoding.UTF8.GetBytes(line));
        writer.Write(line);
    }

    public void End() => writer.Write($"{StudyLines.Checksum} {Convert.ToHexStringLower(hash.GetHashAndReset())}\n{StudyLines.Last}\n");

    public void Dispose() => hash.Dispose();
}
