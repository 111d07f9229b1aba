package journal
import ("testing";"os";"path/filepath";"syscall";"time";"runtime")
func TestZZ(t *testing.T){
 path := filepath.Join(t.TempDir(),"log.toml")
 os.WriteFile(path, []byte(textOf(manyEntries(t, 100000))), 0o600)
 best:=time.Hour; var bu time.Duration=time.Hour
 for range 25 {
  runtime.GC()
  var a,b syscall.Rusage; syscall.Getrusage(0,&a); t0:=time.Now()
  Open(path).Load()
  d:=time.Since(t0); syscall.Getrusage(0,&b)
  u:=time.Duration(b.Utime.Nano()+b.Stime.Nano()-a.Utime.Nano()-a.Stime.Nano())
  if d<best {best=d}; if u<bu {bu=u}
 }
 t.Log("best wall",best,"best cpu",bu)
 text,_:=readText(path)
 for i:=range 4 { t0:=time.Now(); switch i { case 0: readText(path); case 1: whole(text); case 2: notText(text); case 3: newScanner("",text).entries() }; t.Log(i, time.Since(t0)) }
}
