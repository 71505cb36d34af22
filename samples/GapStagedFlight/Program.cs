using GapStagedFlight;

return Command.Run(args, Console.Out, Console.Error);
