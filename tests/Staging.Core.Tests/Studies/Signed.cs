using System.Security.Cryptography;
using System.Text;

namespace Staging.Core.Tests.Studies;

/// <summary>A text of a part that was altered, with the checksum that fits: what is wrong with it has to be found elsewhere.</summary>
internal static class Signed
{
    public static string Again(string text)
    {
        string body = text[..(text.IndexOf("\nchecksum ", StringComparison.Ordinal) + 1)];
        return $"{body}checksum {Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(body)))}\nend\n";
    }
}
