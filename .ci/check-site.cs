#:property PublishAot=false
// Whether a built site holds together.
//   dotnet run .ci/check-site.cs -- docs/_site
// Without a browser: every internal link and anchor leads somewhere. With one (chromium on the path, or its path in the
// variable SITE_BROWSER) the pages are also loaded at the width of a phone and of a desk, from a server that lives as
// long as the check: no page is wider than its screen, none begins out of view, none logs an error, every formula is set,
// and nothing is asked of another host. Of the pages of the API some are loaded. On the start page a word is typed into the
// search, and what is found leads to its page. Exit code 0 if all is well, 1 if not.
using System.Diagnostics;
using System.Net;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;

if (args is not [string site] || !Directory.Exists(site))
{
    Console.Error.WriteLine("error: the folder of a built site is what can be checked.");
    return 1;
}

Dictionary<string, string> pages = Directory.EnumerateFiles(site, "*.html", SearchOption.AllDirectories)
    .ToDictionary(f => Path.GetRelativePath(site, f).Replace('\\', '/'), File.ReadAllText, StringComparer.Ordinal);
var faults = new List<string>(DeadLinks());
Console.WriteLine($"{pages.Count} pages: {faults.Count} dead links");
if (Browser() is { } browser)
    faults.AddRange(await Loaded(browser));
else
    Console.WriteLine("no browser on the path: widths, errors and requests are not checked");
faults.ForEach(Console.WriteLine);
return faults.Count == 0 ? 0 : 1;

IEnumerable<string> DeadLinks()
{
    Dictionary<string, HashSet<string>> anchors = pages.ToDictionary(
        p => p.Key, p => Matches(p.Value, "\\b(?:id|name)=\"([^\"]+)\"").ToHashSet(StringComparer.Ordinal), StringComparer.Ordinal);
    foreach ((string page, string text) in pages)
    {
        foreach (string link in Matches(text, "\\b(?:href|src)=\"([^\"]*)\"").Distinct())
        {
            if (Regex.IsMatch(link, "^(?:[a-z]+:|//)"))
                continue;
            var at = new Uri(new Uri("http://site/" + page), link);
            string target = Uri.UnescapeDataString(at.AbsolutePath.TrimStart('/'));
            string anchor = Uri.UnescapeDataString(at.Fragment.TrimStart('#'));
            if (target.Length == 0 || target.EndsWith('/'))
                target += "index.html";
            if (!File.Exists(Path.Combine(site, target)))
                yield return $"{page}: {link} leads nowhere";
            else if (anchor.Length > 0 && !(anchors.TryGetValue(target, out HashSet<string>? known) && known.Contains(anchor)))
                yield return $"{page}: {link}: no such anchor";
        }
    }
}

async Task<List<string>> Loaded(string browser)
{
    string[] loaded = [.. pages.Keys.Where(p => Path.GetFileName(p) != "toc.html").Order(StringComparer.Ordinal)
        .Where((p, i) => !p.StartsWith("api/", StringComparison.Ordinal) || i % 30 == 0)];
    string profile = Directory.CreateTempSubdirectory("check-site-").FullName;
    using HttpListener server = Started(out string root);
    using var process = Process.Start(new ProcessStartInfo(browser,
        ["--headless", "--no-sandbox", "--disable-gpu", "--no-first-run", $"--user-data-dir={profile}", "--window-size=1400,1000", root + "check"])
    {
        RedirectStandardError = true,
        RedirectStandardOutput = true,
    })!;
    process.BeginErrorReadLine();
    process.BeginOutputReadLine();
    var found = new List<string>();
    int searched = 0; // Every page builds the index of the search anew, which takes longer than all else: the one that searches gets it.
    try
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromMinutes(8));
        while (true)
        {
            HttpListenerContext asked = await server.GetContextAsync().WaitAsync(patience.Token);
            string path = Uri.UnescapeDataString(asked.Request.Url!.AbsolutePath.TrimStart('/'));
            if (asked.Request.HttpMethod == "POST")
            {
                using var body = new StreamReader(asked.Request.InputStream);
                string line = await body.ReadToEndAsync(patience.Token);
                Answer(asked, "text/plain", [], 204);
                if (path == "done")
                {
                    Console.WriteLine($"{loaded.Length} pages loaded at two widths: {found.Count} faults{line}");
                    return found;
                }

                found.Add(line);
            }
            else if (path == "check")
            {
                string driver = Driver.Replace("PAGES", JsonSerializer.Serialize(loaded), StringComparison.Ordinal);
                Answer(asked, "text/html", Encoding.UTF8.GetBytes(driver));
            }
            else if (path == "index.json" && searched++ > 0)
            {
                Answer(asked, Kind(path), "{}"u8.ToArray());
            }
            else if (pages.TryGetValue(path, out string? page))
            {
                Answer(asked, "text/html", Encoding.UTF8.GetBytes(page.Replace("<head>", "<head>" + Listener, StringComparison.Ordinal)));
            }
            else if (File.Exists(Path.Combine(site, path)))
            {
                Answer(asked, Kind(path), await File.ReadAllBytesAsync(Path.Combine(site, path), patience.Token));
            }
            else
            {
                if (path != "favicon.ico")
                    found.Add($"{path} is asked for and is not there");
                Answer(asked, "text/plain", [], 404);
            }
        }
    }
    catch (OperationCanceledException)
    {
        found.Add("the browser has not come to an end within eight minutes");
        return found;
    }
    finally
    {
        process.Kill(entireProcessTree: true);
        await process.WaitForExitAsync();
        Directory.Delete(profile, recursive: true);
    }
}

static HttpListener Started(out string root)
{
    for (int port = 41730; ; port++)
    {
        var listener = new HttpListener();
        listener.Prefixes.Add(root = $"http://127.0.0.1:{port}/");
        try
        {
            listener.Start();
            return listener;
        }
        catch (HttpListenerException) when (port < 41760)
        {
        }
    }
}

static void Answer(HttpListenerContext asked, string kind, byte[] body, int code = 200)
{
    asked.Response.StatusCode = code;
    asked.Response.ContentType = kind;
    // A browser tells of what it would ask of another host, and does not ask.
    asked.Response.Headers["Content-Security-Policy"] = "default-src 'self' 'unsafe-inline' data: blob:";
    asked.Response.Headers["Cache-Control"] = "max-age=600";
    try
    {
        asked.Response.Close(body, willBlock: true);
    }
    catch (HttpListenerException)
    {
        // A page that was left no longer listens.
    }
}

static string Kind(string path) => Path.GetExtension(path) switch
{
    ".js" => "text/javascript",
    ".css" => "text/css",
    ".svg" => "image/svg+xml",
    ".png" => "image/png",
    ".json" => "application/json",
    ".woff2" => "font/woff2",
    _ => "application/octet-stream",
};

static IEnumerable<string> Matches(string text, string pattern) =>
    Regex.Matches(text, pattern).Select(m => WebUtility.HtmlDecode(m.Groups[1].Value));

static string? Browser() =>
    Environment.GetEnvironmentVariable("SITE_BROWSER") is { Length: > 0 } told ? told
    : (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .SelectMany(folder => new[] { "chromium", "chromium-browser" }.Select(name => Path.Combine(folder, name)))
        .FirstOrDefault(File.Exists);

partial class Program
{
    /// <summary>Goes before all other scripts of a page, and keeps what it logs.</summary>
    private const string Listener = """
        <script>
        window.faults = [];
        addEventListener('error', e => faults.push('error: ' + (e.message || (e.target.src || e.target.href) + ' does not load')), true);
        addEventListener('unhandledrejection', e => faults.push('error: ' + e.reason));
        addEventListener('securitypolicyviolation', e => faults.push('asks ' + e.blockedURI));
        console.error = (...words) => faults.push('error: ' + words.join(' '));
        </script>
        """;

    /// <summary>Loads one page after the other into a frame, a few at a time, and makes the frame as wide as each screen.</summary>
    private const string Driver = """
        <!DOCTYPE html><title>check</title><script>
        const pages = PAGES, begun = performance.now();
        const tell = (where, text) => fetch('/' + where, { method: 'POST', body: text });
        const pause = ms => new Promise(done => setTimeout(done, ms));
        async function visit(page) {
          const frame = document.createElement('iframe');
          frame.style = 'width:390px;height:844px;border:0';
          frame.src = '/' + page;
          document.body.append(frame);
          await new Promise(done => frame.onload = done);
          const window = frame.contentWindow, document_ = frame.contentDocument, all = q => [...document_.querySelectorAll(q)];
          const set = () => all('.math').every(m => m.querySelector('mjx-container')) && all('#toc').every(t => t.firstElementChild);
          for (let waited = 0; !set() && waited < 10000; waited += 50) await pause(50);
          const faults = window.faults;
          if (!set()) faults.push('a formula or the contents are not set');
          all('mjx-merror, [data-mjx-error]').forEach(m => faults.push('a formula has an error: ' + m.textContent));
          for (const width of [390, 1280]) {
            frame.style.width = width + 'px';
            await pause(50);
            const page_ = document_.documentElement, inside = 'pre, .table-responsive, .math, p:has(img)';
            if (page_.scrollWidth > width) {
              const wide = all('article *').find(e => e.getBoundingClientRect().right > width + 1 && !e.closest(inside));
              faults.push(`is ${page_.scrollWidth} px wide at ${width}` + (wide ? `: <${wide.tagName}> ${wide.textContent.slice(0, 40)}` : ''));
            }
            const heading = document_.querySelector('article h1');
            if (heading && heading.getBoundingClientRect().top > 600) faults.push(`begins out of view at ${width}`);
          }
          for (const fault of new Set(faults)) await tell('fault', `${page} ${fault}`);
          frame.remove();
        }
        // Types a word into the search of the start page, and follows what is found first to its page.
        async function search(word) {
          const frame = document.createElement('iframe'), faults = [];
          frame.style = 'width:1280px;height:844px;border:0';
          frame.src = '/index.html';
          document.body.append(frame);
          const until = async found => {
            for (let waited = 0; waited < 60000; waited += 50) {
              const there = found(frame.contentDocument);
              if (there) return there;
              await pause(50);
            }
          };
          const box = await until(page => page.querySelector('#search-query:enabled'));
          if (box) {
            box.value = word;
            box.dispatchEvent(new Event('input'));
          }
          const list = box && await until(page => page.querySelector('#search-results .search-list'));
          const hit = list && frame.contentDocument.querySelector('#search-results .sr-item a');
          if (hit) {
            const title = hit.textContent;
            frame.src = hit.href;
            const heading = await until(page => !page.querySelector('#search-results .sr-item') && page.querySelector('article h1'));
            const text = heading ? heading.closest('article').textContent.toLowerCase() : '';
            if (!text.includes(word)) faults.push(`search for ${word}: what is found, ${title}, does not lead to a page with that word`);
          } else {
            faults.push(box ? `search for ${word} finds nothing` : 'the search does not begin to work within a minute');
          }
          for (const fault of faults) await tell('fault', fault);
          frame.remove();
        }
        addEventListener('load', async () => {
          await search('chamber');
          const searched = performance.now();
          const left = [...pages];
          await Promise.all([1, 2, 3].map(async () => { while (left.length > 0) await visit(left.shift()); }));
          const seconds = since => ((performance.now() - since) / 1000).toFixed(0);
          await tell('done', `, ${seconds(begun)} s; ${seconds(searched)} s of them after the search`);
        });
        </script><body></body>
        """;
}
