using TemplateForge.Geometry.Fuzz;

Options options;
try
{
    options = Options.Read(args);
}
catch (FormatException trouble)
{
    Console.Error.WriteLine(trouble.Message);
    Console.Error.WriteLine(Options.Usage);
    return 2;
}
return options.HardContours is { } path ? HardContours.Try(path) : new Hunt(options).Run();
