using System.Diagnostics;
using System.IO;

namespace TemplateForge.Benchmarks;

/// <summary>The programs that are measured, and beside them two that do nothing: what starting a process costs on this machine.</summary>
internal sealed class Workbench : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("templateforge-");
    private readonly string native;
    private readonly string plain;

    public Workbench(string native, string plain)
    {
        (this.native, this.plain) = (Directory.Exists(native) ? Path.Combine(native, "templateforge") : native, plain);
        // The settings of the program itself, so that the only difference is what it does.
        Directory.CreateDirectory(At("empty"));
        File.WriteAllText(At("empty", "empty.csproj"), """
            <Project Sdk="Microsoft.NET.Sdk">
              <PropertyGroup>
                <OutputType>Exe</OutputType>
                <TargetFramework>net10.0</TargetFramework>
                <InvariantGlobalization>true</InvariantGlobalization>
                <ConcurrentGarbageCollection>false</ConcurrentGarbageCollection>
                <TieredPGO>false</TieredPGO>
                <CppCompilerAndLinker Condition="Exists('/usr/bin/gcc') And !Exists('/usr/bin/clang')">gcc</CppCompilerAndLinker>
              </PropertyGroup>
            </Project>
            """);
        File.WriteAllText(At("empty", "Empty.cs"), "return 0;\n");
        Run("dotnet", "publish", At("empty", "empty.csproj"), "-r", RuntimeId, "-p:PublishAot=true", "--artifacts-path", At("native"), "-o", At("empty-native"));
        Run("dotnet", "build", At("empty", "empty.csproj"), "-c", "Release", "--artifacts-path", At("plain"), "-o", At("empty-plain"));
    }

    private static string RuntimeId => System.Runtime.InteropServices.RuntimeInformation.RuntimeIdentifier;

    public string[] EmptyNative => [At("empty-native", "empty")];
    public string[] EmptyPlain => ["dotnet", At("empty-plain", "empty.dll")];
    public string[] Native => [native];
    public string[] Plain => ["dotnet", plain];

    /// <summary>A name in a folder that goes when the bench does.</summary>
    public string At(params string[] names) => Path.Combine([folder.FullName, .. names]);

    /// <summary>Runs a program to its end.</summary>
    /// <returns>How long it took, and the most memory that it held, in bytes, where the system tells.</returns>
    public static (TimeSpan Took, long Peak) Run(params string[] words)
    {
        var start = Stopwatch.GetTimestamp();
        using var process = Process.Start(new ProcessStartInfo(words[0], words[1..]) { UseShellExecute = false, RedirectStandardOutput = true, RedirectStandardError = true })!;
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEndAsync();
        var peak = 0L;
        // The kernel keeps the most that there was, so the last look before the end has it, but for what came after.
        while (!process.WaitForExit(10)) peak = Math.Max(peak, PeakOf(process.Id));
        process.WaitForExit();
        var took = Stopwatch.GetElapsedTime(start);
        if (process.ExitCode != 0) throw new InvalidOperationException($"{string.Join(' ', words)} ended with {process.ExitCode}: {output.Result}{errors.Result}");
        return (took, peak);
    }

    public void Dispose() => folder.Delete(recursive: true);

    private static long PeakOf(int process)
    {
        try
        {
            var line = File.ReadLines($"/proc/{process}/status").FirstOrDefault(l => l.StartsWith("VmHWM:", StringComparison.Ordinal));
            return line is null ? 0 : 1024 * long.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[^2], System.Globalization.CultureInfo.InvariantCulture);
        }
        catch (IOException)
        {
            return 0;
        }
    }
}
