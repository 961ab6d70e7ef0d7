@echo off
rem Starts Sheathwright; builds it first in a fresh clone and whenever its sources differ from those of the last build.
rem Not tried on Windows: the class archive, the second compiler of "solve", and Maven's options for a newer Java. They
rem were written after the launcher for other systems, where they were tried.
setlocal EnableExtensions DisableDelayedExpansion
set "here=%~dp0."
set "target=%here%\target"
set "jar=%target%\sheathwright.jar"
set "stamp=%target%\launcher.stamp"
set "built=%target%\launcher-built"
set "lock=%target%\launcher.lock.d"
set "archive=%target%\sheathwright.jsa"
set "options=-XX:+UseSerialGC -Xshare:auto -Dlog4j.provider=org.apache.logging.log4j.simple.internal.SimpleProvider"
set "options=%options% -Dorg.apache.logging.log4j.simplelog.level=OFF"
set "options=%options% -Dfile.encoding=UTF-8 -Dstdout.encoding=UTF-8 -Dstderr.encoding=UTF-8"
set "options=%options% -Dsun.stdout.encoding=UTF-8 -Dsun.stderr.encoding=UTF-8"

set "java="
for %%j in (java.exe) do set "java=%%~$PATH:j"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if not defined java (
  >&2 echo sheathwright: there is no java on the path; install JDK 17 or newer
  exit /b 1
)

call :up_to_date
if errorlevel 1 call :build_alone
if errorlevel 1 exit /b 1
set "fit="
set /p fit=<"%stamp%"
if not "%fit%"=="%java%" call :check_java
if errorlevel 1 exit /b 1

rem The console shows UTF-8 while the program runs, and goes back to its own code page afterwards.
for /f "tokens=2 delims=:" %%c in ('chcp') do set "codepage=%%c"
set "codepage=%codepage:.=%"
chcp 65001 >nul
rem -Dsheathwright.terminals is not given here: which stream ends at the console, Java finds out as far as it can.
rem A search runs long enough for the second compiler to pay.
set "compiler=1"
if "%~1"=="solve" set "compiler=4"
if "%~1"=="quote" if not "%~9"=="" set "compiler=4"
set "shared=-Xshare:auto"
if exist "%archive%" set "shared=-XX:SharedArchiveFile=%archive%"
"%java%" -XX:TieredStopAtLevel=%compiler% %options% "%shared%" -Xlog:disable -jar "%jar%" %*
set "status=%errorlevel%"
chcp %codepage% >nul
exit /b %status%

rem A copy of the sources as they were last built stands in target; robocopy /L says whether they differ.
:up_to_date
if not exist "%stamp%" exit /b 1
if not exist "%jar%" exit /b 1
call :sources /L
if errorlevel 1 exit /b 1
exit /b 0

:sources
set "differ=0"
robocopy "%here%\src\main" "%built%\main" /MIR /R:1 /W:1 %* >nul
if errorlevel 1 set "differ=1"
robocopy "%here%\src\build" "%built%\build" /MIR /R:1 /W:1 %* >nul
if errorlevel 1 set "differ=1"
robocopy "%here%" "%built%\pom" pom.xml /R:1 /W:1 %* >nul
if errorlevel 1 set "differ=1"
exit /b %differ%

rem One build at a time; whoever waited looks again before building.
:build_alone
if not exist "%target%" md "%target%" 2>nul
set "told="
:wait
md "%lock%" 2>nul && goto locked
if not defined told >&2 echo sheathwright: waiting for another build to end; if none is running, remove %lock%
set "told=yes"
ping -n 2 127.0.0.1 >nul
goto wait
:locked
call :up_to_date
if errorlevel 1 call :build
set "status=%errorlevel%"
rd "%lock%"
exit /b %status%

:build
call :check_java
if errorlevel 1 exit /b 1
where mvn >nul 2>nul
if errorlevel 1 (
  >&2 echo sheathwright: there is no mvn on the path; install Maven 3.8 or newer
  exit /b 1
)
>&2 echo sheathwright: building, which takes a minute the first time
if exist "%stamp%" del "%stamp%"
rem The copy is made before the build: what is edited meanwhile differs from it.
call :sources
rem Maven's own libraries make a newer Java warn; only the one that JAVA_HOME names is surely Maven's too.
set "quiet="
if %major% GEQ 24 if "%java%"=="%JAVA_HOME%\bin\java.exe" set "quiet=yes"
if defined quiet set "MAVEN_OPTS=%MAVEN_OPTS% --enable-native-access=ALL-UNNAMED --sun-misc-unsafe-memory-access=allow"
call mvn -B -q -f "%here%\pom.xml" -DskipTests -Dmaven.test.skip=true package <nul 1>&2
if errorlevel 1 (
  >&2 echo sheathwright: the build failed; the reason stands above
  exit /b 1
)
call :archive_classes
>"%stamp%" echo %java%
exit /b 0

rem Keeps the classes that a session needs in one file that Java maps in whole; without it everything works, but later.
:archive_classes
if exist "%archive%" del "%archive%"
set "list=%target%\sheathwright.classes"
"%java%" -XX:TieredStopAtLevel=1 %options% "-XX:DumpLoadedClassList=%list%" -Xlog:disable -jar "%jar%" ^
  run "%here%\src\build\warm-up.jsh" <nul >nul 2>nul
if errorlevel 1 exit /b 0
"%java%" -XX:TieredStopAtLevel=1 %options% -Xshare:dump "-XX:SharedClassListFile=%list%" ^
  "-XX:SharedArchiveFile=%archive%" -Xlog:disable -cp "%jar%" <nul >nul 2>nul
if errorlevel 1 if exist "%archive%" del "%archive%"
del "%list%"
exit /b 0

:check_java
set "version="
"%java%" -version 2>&1 | findstr /c:" version " >"%target%\launcher.java"
for /f "usebackq tokens=3" %%v in ("%target%\launcher.java") do set "version=%%~v"
set "major=0"
for /f "delims=.-+" %%m in ("%version%") do set "major=%%m"
if %major% GEQ 17 exit /b 0
>&2 echo sheathwright: "%java%" is version %version%; install JDK 17 or newer
exit /b 1
