return Staging.Core.Campaign.Command.Run(args, Console.Out);
