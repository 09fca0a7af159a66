using PatternGen.Gallery;

return await CommandLine.RunAsync(args);
