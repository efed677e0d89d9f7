using System.Diagnostics;
using TemplateForge.Testing;

namespace TemplateForge.Geometry.Fuzz;

/// <summary>Tries the laws on case after case, on all cores, each family's turn after the other's.</summary>
internal sealed class Hunt(Options options)
{
    /// <summary>So many cases of one family and law are shrunk and printed; the others are only counted.</summary>
    private const int PrintedOfAKind = 3;

    private static readonly TimeSpan _stuck = TimeSpan.FromSeconds(60);

    private readonly Stopwatch _clock = Stopwatch.StartNew();
    private readonly Lock _printing = new();
    private readonly Dictionary<(string Family, string Law), int> _found = [];
    private readonly int[] _tried = new int[options.Families.Count];
    private long _next = -1;

    /// <returns>The exit code.</returns>
    public int Run()
    {
        var workers = Enumerable.Range(0, Environment.ProcessorCount).Select(_ => new Worker(this)).ToArray();
        var threads = workers.Select(w => new Thread(w.Run) { IsBackground = true }).ToArray();
        foreach (var thread in threads) thread.Start();
        var nextReport = TimeSpan.FromSeconds(10);
        while (threads.Any(t => t.IsAlive))
        {
            foreach (var thread in threads) thread.Join(100);
            if (_clock.Elapsed > nextReport)
            {
                nextReport += TimeSpan.FromSeconds(10);
                lock (_printing) Console.Error.WriteLine($"{_clock.Elapsed:mm\\:ss}  {_tried.Sum()} cases, {Failures} failures");
            }
            foreach (var worker in workers)
            {
                if (_clock.Elapsed - worker.Since < _stuck) continue;
                Report(worker.Now, worker.Law, $"it has not ended after {_stuck.TotalSeconds} s", worker.Trial);
                lock (_printing) _found[(worker.Now.Family.Name, worker.Law)] = 1;
                return Sum();
            }
        }
        return Sum();
    }

    private int Sum()
    {
        lock (_printing)
        {
            for (var i = 0; i < _tried.Length; i++)
            {
                var name = options.Families[i].Name;
                var failures = _found.Where(f => f.Key.Family == name).Select(f => $"{f.Value} {f.Key.Law}");
                Console.WriteLine($"{name,-16}{_tried[i],8} cases  {string.Join(", ", failures.DefaultIfEmpty("all right"))}");
            }
            Console.WriteLine($"seed {options.Seed}, {_clock.Elapsed:mm\\:ss}, {Failures} failures");
            return _found.Count == 0 ? 0 : 1;
        }
    }

    private void Report((Family Family, int Number) drawn, string law, string why, Trial? shrunk)
    {
        lock (_printing)
        {
            Console.WriteLine($"FAIL {drawn.Family.Name} {law}: --family {drawn.Family.Name} --seed {options.Seed} --case {drawn.Number}");
            Console.WriteLine($"     {why}");
            if (shrunk is not null) Console.WriteLine(AsTest.Of(shrunk, drawn.Family.Name, law, drawn.Number, why));
        }
    }

    /// <summary>Whether this one of its kind is to be printed.</summary>
    private bool Count(string family, string law)
    {
        lock (_printing)
        {
            _found[(family, law)] = _found.GetValueOrDefault((family, law)) + 1;
            return _found[(family, law)] <= PrintedOfAKind;
        }
    }

    private sealed class Worker(Hunt hunt)
    {
        public (Family Family, int Number) Now { get; private set; }

        public Trial? Trial { get; private set; }

        public string Law { get; private set; } = "";

        /// <summary>When it last turned to something new.</summary>
        public TimeSpan Since { get; private set; }

        public void Run()
        {
            var families = hunt.Options.Families;
            while (hunt._clock.Elapsed < hunt.Options.Time && hunt.Failures < hunt.Options.Failures)
            {
                var turn = Interlocked.Increment(ref hunt._next);
                if (turn >= (long)families.Count * hunt.Options.Cases) break;
                var family = (int)(turn % families.Count);
                Now = (families[family], hunt.Options.FirstCase + (int)(turn / families.Count));
                Try();
                Interlocked.Increment(ref hunt._tried[family]);
            }
            Since = TimeSpan.MaxValue;
        }

        private void Try()
        {
            Trial trial;
            (Law, Since) = ("Drawing", hunt._clock.Elapsed);
            try
            {
                Trial = null;
                trial = Trial = Now.Family.Case(hunt.Options.Seed, Now.Number);
            }
#pragma warning disable CA1031 // whatever is thrown is the finding
            catch (Exception trouble)
#pragma warning restore CA1031
            {
                if (hunt.Count(Now.Family.Name, "Drawing")) hunt.Report(Now, "Drawing", trouble.ToString(), shrunk: null);
                return;
            }
            foreach (var law in hunt.Options.Laws)
            {
                if (!hunt.Options.EveryLaw && Now.Number % law.OneIn != 0) continue;
                (Law, Since) = (law.Name, hunt._clock.Elapsed);
                if (Shrinking.Breaks(law, trial, out _) && hunt.Count(Now.Family.Name, law.Name))
                {
                    var smallest = Shrinking.Smallest(law, trial, () => Since = hunt._clock.Elapsed);
                    Shrinking.Breaks(law, smallest, out var why);
                    hunt.Report(Now, law.Name, why, smallest);
                }
            }
        }
    }

    private Options Options => options;

    private int Failures
    {
        get
        {
            lock (_printing) return _found.Values.Sum();
        }
    }
}
