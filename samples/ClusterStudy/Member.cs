using System.Net;
using System.Net.Sockets;
using Microsoft.Extensions.Hosting;
using Microsoft.Extensions.Logging;
using Orleans.Configuration;

namespace ClusterStudy;

/// <summary>
/// Silos of a cluster inside this process, on the loop-back address. Members elsewhere would differ in their addresses
/// alone.
/// </summary>
internal static class Member
{
    public static async Task<IHost> Start(string name, int port, int primaryPort)
    {
        IHost host = Host.CreateDefaultBuilder()
            .ConfigureLogging(log => log.ClearProviders())
            .UseOrleans(silo =>
            {
                silo.UseLocalhostClustering(port, FreePort(), new IPEndPoint(IPAddress.Loopback, primaryPort), "study", "study");
                silo.Configure<SiloOptions>(o => o.SiloName = name);
                // A lost member is found within seconds, and an answer that does not come is not waited for much
                // longer.
                silo.Configure<ClusterMembershipOptions>(o =>
                {
                    (o.ProbeTimeout, o.NumMissedProbesLimit, o.NumVotesForDeathDeclaration) = (TimeSpan.FromSeconds(1), 2, 1);
                    o.TableRefreshTimeout = TimeSpan.FromSeconds(1);
                });
                silo.Configure<SiloMessagingOptions>(o => o.ResponseTimeout = TimeSpan.FromSeconds(20));
            })
            .Build();
        await host.StartAsync();
        return host;
    }

    public static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    /// <summary>Stops a silo without letting it say goodbye.</summary>
    public static async Task Drop(IHost host)
    {
        try
        {
            await host.StopAsync(new CancellationToken(canceled: true));
        }
        catch (OperationCanceledException)
        {
        }

        host.Dispose();
    }
}
