return Staging.Core.Fuzz.Command.Run(args, Console.Out);
