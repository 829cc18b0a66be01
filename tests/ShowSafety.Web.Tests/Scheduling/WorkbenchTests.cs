using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Extensions.Time.Testing;
using ShowSafety.Web.Scheduling;

namespace ShowSafety.Web.Tests.Scheduling;

public sealed class WorkbenchTests : IDisposable
{
    private static readonly TimeSpan Soon = TimeSpan.FromSeconds(30);

    private readonly FakeTimeProvider time = new();
    private readonly Workbench bench;

    public WorkbenchTests() => bench = new Workbench(time);

    public void Dispose() => bench.Dispose();

    [Theory]
    [InlineData("Interactive")]
    [InlineData("Background")]
    public async Task Run_LongerThanItsTime_IsEndedAndSaysSo(string lane)
    {
        using var work = new Endless();
        var run = bench.RunAsync(Enum.Parse<Lane>(lane), new("a"), work.Run, CancellationToken.None);
        await work.Started(1);

        time.Advance(Workbench.Budget - TimeSpan.FromMilliseconds(1));
        Assert.Equal(0, work.Ended);
        time.Advance(TimeSpan.FromMilliseconds(1));

        Assert.Equal(503, StatusOf(await run.WaitAsync(Soon, Now)));
        Assert.Equal(1, work.Ended);
    }

    [Fact]
    public async Task Run_OneWaitingInTheLane_SpendsItsTimeTooAndNeverStarts()
    {
        using var first = new Endless();
        using var second = new Endless();
        using var gone = new CancellationTokenSource();
        var ahead = bench.RunAsync(Lane.Interactive, new("a"), first.Run, gone.Token);
        await first.Started(1);
        time.Advance(Workbench.Budget / 2);
        var behind = bench.RunAsync(Lane.Interactive, new("a"), second.Run, CancellationToken.None);

        await gone.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => ahead.WaitAsync(Soon, Now));
        await second.Started(1);
        time.Advance(Workbench.Budget);

        Assert.Equal(503, StatusOf(await behind.WaitAsync(Soon, Now)));
        Assert.Equal((1, 1), (first.Ended, second.Ended));
    }

    [Fact]
    public async Task Run_LaterOneOfTheTab_EndsTheOneRunningAndTheOneWaiting()
    {
        using var running = new Endless();
        using var waiting = new Endless();
        var first = bench.RunAsync(Lane.Interactive, new("drag", "tab"), running.Run, CancellationToken.None);
        await running.Started(1);
        var second = bench.RunAsync(Lane.Interactive, new("drag", "tab"), waiting.Run, CancellationToken.None);

        var third = bench.RunAsync(Lane.Interactive, new("drag", "tab"), _ => TypedResults.Ok(), Now);

        Assert.Equal("superseded", CodeOf(await first.WaitAsync(Soon, Now)));
        Assert.Equal("superseded", CodeOf(await second.WaitAsync(Soon, Now)));
        Assert.Equal(200, StatusOf(await third.WaitAsync(Soon, Now)));
        Assert.Equal(1, running.Ended);
        Assert.True(waiting.Starts == waiting.Ended);
    }

    [Theory]
    [InlineData("drag", "other tab")]
    [InlineData("points", "tab")]
    [InlineData("drag", null)]
    public async Task Run_OtherTabOrOtherOperation_EndsNothing(string operation, string? tab)
    {
        using var work = new Endless();
        using var gone = new CancellationTokenSource();
        var first = bench.RunAsync(Lane.Interactive, new("drag", "tab"), work.Run, gone.Token);
        await work.Started(1);

        var second = bench.RunAsync(Lane.Interactive, new(operation, tab), _ => TypedResults.Ok(), Now);

        Assert.False(first.IsCompleted);
        await gone.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => first.WaitAsync(Soon, Now));
        Assert.Equal(200, StatusOf(await second.WaitAsync(Soon, Now)));
    }

    [Fact]
    public async Task Run_NobodyWaitsAnyMore_EndsTheWork()
    {
        using var work = new Endless();
        using var gone = new CancellationTokenSource();
        var run = bench.RunAsync(Lane.Background, new("a"), work.Run, gone.Token);
        await work.Started(1);

        await gone.CancelAsync();

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => run.WaitAsync(Soon, Now));
        Assert.Equal(1, work.Ended);
    }

    [Fact]
    public async Task Run_HandMovesMeanwhile_TheBackgroundGivesWayAndBeginsAnewWhenItRests()
    {
        using var document = new Endless();
        var background = bench.RunAsync(Lane.Background, new("brief"), document.Run, CancellationToken.None);
        await document.Started(1);

        var drag = await bench.RunAsync(Lane.Interactive, new("drag"), _ => TypedResults.Ok(), Now);
        Assert.Equal(200, StatusOf(drag));
        await document.HasEnded(1);
        Assert.Equal(1, document.Starts);
        time.Advance(Stillness.Pause);
        await document.Started(2);
        document.Finish();

        Assert.Equal(200, StatusOf(await background.WaitAsync(Soon, Now)));
    }

    [Fact]
    public async Task Run_HandNeverRests_TheBackgroundRunsThroughWhenItsPatienceIsOver()
    {
        using var drag = new Endless();
        using var document = new Endless();
        using var gone = new CancellationTokenSource();
        var moving = bench.RunAsync(Lane.Interactive, new("drag"), drag.Run, gone.Token);
        await drag.Started(1);
        var background = bench.RunAsync(Lane.Background, new("brief"), document.Run, CancellationToken.None);

        time.Advance(Workbench.Patience);
        await document.Started(1);
        await gone.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => moving.WaitAsync(Soon, Now));
        await bench.RunAsync(Lane.Interactive, new("drag"), _ => TypedResults.Ok(), Now);
        Assert.Equal(0, document.Ended);
        document.Finish();

        Assert.Equal(200, StatusOf(await background.WaitAsync(Soon, Now)));
        Assert.Equal(1, document.Starts);
    }

    private static CancellationToken Now => TestContext.Current.CancellationToken;

    private static int? StatusOf(IResult result) => ((IStatusCodeHttpResult)result).StatusCode;

    private static object? CodeOf(IResult result)
    {
        var problem = Assert.IsType<ProblemHttpResult>(result);
        Assert.Equal(409, problem.StatusCode);
        return problem.ProblemDetails.Extensions["code"];
    }

    /// <summary>Work that ends when it is told to, and counts.</summary>
    private sealed class Endless : IDisposable
    {
        private readonly ManualResetEventSlim finish = new();
        private int starts;
        private int ended;

        public int Starts => Volatile.Read(ref starts);

        public int Ended => Volatile.Read(ref ended);

        public Ok Run(CancellationToken cancel)
        {
            Interlocked.Increment(ref starts);
            try
            {
                finish.Wait(cancel);
                return TypedResults.Ok();
            }
            catch (OperationCanceledException)
            {
                Interlocked.Increment(ref ended);
                throw;
            }
        }

        public void Finish() => finish.Set();

        public Task Started(int times) => Until(() => Starts >= times);

        public Task HasEnded(int times) => Until(() => Ended >= times);

        public void Dispose() => finish.Dispose();

        private static async Task Until(Func<bool> holds)
        {
            using var enough = new CancellationTokenSource(Soon);
            while (!holds())
            {
                await Task.Delay(5, enough.Token);
            }
        }
    }
}
